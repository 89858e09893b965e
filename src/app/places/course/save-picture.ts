import { answered, refused, type Outcome } from '#core/problems/problem.ts';

/** Width of the picture, wide enough for print and for a message to a coach, px. */
const WIDTH_PX = 1200;
/** Room for the words above the drawing, and their size. */
const WORDS = { line: 44, top: 24, size: 26, left: 20 } as const;
/** Letters of the drawing are set a little smaller: a picture of its own has no web font, and others run wider. */
const LETTERS = 0.85;

/** Properties of a drawing that stand in the style sheets; in a picture of its own they must stand on the elements. */
const DRAWN = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'opacity',
  'font-weight',
  'paint-order',
] as const;

/** Draws an SVG of the page into a PNG on this device, with words above it, the first of them in bold. */
export async function pictureOf(drawing: SVGSVGElement, words: readonly string[]): Promise<Outcome<Blob>> {
  const { width, height } = drawing.getBoundingClientRect();
  const finer = WIDTH_PX / width;
  const head = WORDS.top + WORDS.line * words.length;
  const url = URL.createObjectURL(
    new Blob([standingAlone(drawing, width, height)], { type: 'image/svg+xml' }),
  );
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = WIDTH_PX;
    canvas.height = Math.round(finer * height + head);
    const paper = canvas.getContext('2d');
    if (!paper) return noPicture();
    const look = getComputedStyle(drawing);
    paper.fillStyle = look.getPropertyValue('--sheet') || 'white';
    paper.fillRect(0, 0, canvas.width, canvas.height);
    paper.fillStyle = look.getPropertyValue('--ink') || 'black';
    for (const [line, text] of words.entries()) {
      paper.font = `${line === 0 ? 700 : 400} ${WORDS.size}px ${look.fontFamily}`;
      paper.fillText(text, WORDS.left, WORDS.top + WORDS.line * line + WORDS.size, WIDTH_PX - 2 * WORDS.left);
    }
    paper.drawImage(image, 0, head, WIDTH_PX, finer * height);
    const png = await new Promise<Blob | null>((done) => {
      canvas.toBlob(done, 'image/png');
    });
    return png ? answered(png) : noPicture();
  } catch (fault) {
    // A drawing that the browser cannot decode is said; anything else is a fault of ours.
    if (fault instanceof DOMException) return noPicture();
    throw fault;
  } finally {
    URL.revokeObjectURL(url);
  }
}

function standingAlone(drawing: SVGSVGElement, width: number, height: number): string {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const [here, there] = [
    [drawing, ...drawing.querySelectorAll('*')],
    [copy, ...copy.querySelectorAll('*')],
  ];
  for (const [index, element] of here.entries()) {
    const style = getComputedStyle(element);
    for (const name of DRAWN) {
      const value = style.getPropertyValue(name);
      if (value !== '' && value !== 'none' && value !== 'normal') there[index]?.setAttribute(name, value);
      if (value === 'none') there[index]?.setAttribute(name, 'none');
    }
    const size = Number.parseFloat(style.fontSize);
    if (element.tagName === 'text') there[index]?.setAttribute('font-size', String(LETTERS * size));
    there[index]?.removeAttribute('style');
  }
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  copy.setAttribute('font-family', 'sans-serif');
  return new XMLSerializer().serializeToString(copy);
}

function noPicture(): Outcome<never> {
  return refused(
    'course/no-picture',
    '',
    'This browser did not draw the picture.',
    'Print the sheet to a PDF instead; the chart is on it.',
  );
}
