import { capital } from '#core/units/capital.ts';
import type { RecipeCard } from '#core/kitchen/recipe/recipe-card.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';

const WIDTH_PX = 1080;
const MARGIN_PX = 72;
const FAMILY = 'system-ui, sans-serif';
const INK = '#1b1b18';
const SOFT = '#55554d';
const PAPER = '#fbfaf5';

interface Line {
  readonly left: string;
  readonly right?: string;
  readonly sizePx: number;
  readonly bold?: boolean;
  readonly soft?: boolean;
  readonly ruled?: boolean;
  readonly beforePx: number;
}

/** Draws the card on this device: what is on paper, one column, wide enough for a message. */
export async function cardPicture(card: RecipeCard): Promise<Outcome<Blob>> {
  const canvas = document.createElement('canvas');
  const paper = canvas.getContext('2d');
  if (!paper) return noPicture();
  const lines = linesOf(card).flatMap((line) => wrapped(paper, line));
  canvas.width = WIDTH_PX;
  canvas.height = 2 * MARGIN_PX + lines.reduce((sum, line) => sum + heightOf(line), 0);
  paper.fillStyle = PAPER;
  paper.fillRect(0, 0, canvas.width, canvas.height);
  let y = MARGIN_PX;
  for (const line of lines) {
    y += heightOf(line);
    drawLine(paper, line, y);
  }
  const png = await new Promise<Blob | null>((done) => {
    canvas.toBlob(done, 'image/png');
  });
  return png ? answered(png) : noPicture();
}

function linesOf(card: RecipeCard): Line[] {
  const head = (left: string): Line => ({ left, sizePx: 34, bold: true, beforePx: 36 });
  const row = ({ name, value }: { readonly name: string; readonly value: string }): Line => ({
    left: capital(name),
    right: value,
    sizePx: 32,
    ruled: true,
    beforePx: 14,
  });
  return [
    { left: card.title, sizePx: 60, bold: true, beforePx: 0 },
    { left: card.makes, sizePx: 32, soft: true, beforePx: 8 },
    head(`In ${card.portion}`),
    ...card.perPortion.map(row),
    head('Raw, into the pan'),
    ...card.ingredients.map(row),
    ...(card.steps.length > 0 ? [head('Steps')] : []),
    ...card.steps.map((step, place): Line => ({ left: `${place + 1}. ${step}`, sizePx: 32, beforePx: 10 })),
  ];
}

function heightOf(line: Line): number {
  return line.beforePx + Math.round(line.sizePx * 1.3);
}

function setFont(paper: CanvasRenderingContext2D, line: Line): void {
  paper.font = `${line.bold === true ? 700 : 400} ${line.sizePx}px ${FAMILY}`;
}

/** Broken between words where it is wider than the card; a figure stays on its first line. */
function wrapped(paper: CanvasRenderingContext2D, line: Line): Line[] {
  setFont(paper, line);
  const room =
    WIDTH_PX - 2 * MARGIN_PX - (line.right === undefined ? 0 : paper.measureText(line.right).width + 40);
  const rows: string[] = [];
  for (const word of line.left.split(' ')) {
    const last = rows.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last === undefined || paper.measureText(longer).width > room) rows.push(word);
    else rows[rows.length - 1] = longer;
  }
  return rows.map((left, place) => {
    const { right, ...rest } = line;
    const first = place === 0;
    return {
      ...rest,
      left,
      ...(first && right !== undefined && { right }),
      beforePx: first ? line.beforePx : 0,
      ruled: line.ruled === true && place === rows.length - 1,
    };
  });
}

function drawLine(paper: CanvasRenderingContext2D, line: Line, y: number): void {
  setFont(paper, line);
  paper.fillStyle = line.soft === true ? SOFT : INK;
  paper.textAlign = 'left';
  const baseline = y - line.sizePx * 0.3;
  paper.fillText(line.left, MARGIN_PX, baseline);
  if (line.right !== undefined) {
    paper.textAlign = 'right';
    paper.fillText(line.right, WIDTH_PX - MARGIN_PX, baseline);
  }
  if (line.ruled === true) paper.fillRect(MARGIN_PX, y + 4, WIDTH_PX - 2 * MARGIN_PX, 1);
}

function noPicture(): Outcome<never> {
  return refused(
    'kitchen/no-picture',
    '',
    'This browser did not draw the picture.',
    'Print the card to a PDF instead.',
  );
}
