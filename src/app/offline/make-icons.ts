import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { crc32, deflateSync } from 'node:zlib';

/**
 * Draws the app's icon, a plumb bob over its mark, from one list of shapes: as SVG and as PNG of 192 and 512 px.
 * Run after changing the drawing: `node --import tsx src/app/offline/make-icons.ts`.
 */
const PAPER = '#f8f9f5';
const INK = '#12201e';

type Corner = readonly [x: number, y: number];

/** On a square of 100. */
const SHAPES: readonly (readonly Corner[])[] = [
  [
    [18, 14],
    [82, 14],
    [82, 20],
    [18, 20],
  ],
  [
    [48.6, 20],
    [51.4, 20],
    [51.4, 40],
    [48.6, 40],
  ],
  [
    [44, 38],
    [56, 38],
    [56, 44],
    [64, 44],
    [61, 59],
    [50, 76],
    [39, 59],
    [36, 44],
    [44, 44],
  ],
  [
    [18, 84],
    [38, 84],
    [43, 90],
    [18, 90],
  ],
  [
    [82, 84],
    [62, 84],
    [57, 90],
    [82, 90],
  ],
];

/** Samples across a pixel in each direction, for smooth edges. */
const SAMPLES = 4;

function isInside(shape: readonly Corner[], x: number, y: number): boolean {
  let inside = false;
  shape.forEach(([fromX, fromY], index) => {
    const [toX, toY] = shape[(index + 1) % shape.length] ?? [fromX, fromY];
    if (fromY > y !== toY > y && x < fromX + ((y - fromY) / (toY - fromY)) * (toX - fromX)) inside = !inside;
  });
  return inside;
}

/** Share of ink in the pixel at this column and row. `scale` shrinks the drawing towards the middle. */
function inkAt(column: number, row: number, size: number, scale: number): number {
  let hits = 0;
  for (let sample = 0; sample < SAMPLES * SAMPLES; sample++) {
    const x = ((column + ((sample % SAMPLES) + 0.5) / SAMPLES) / size - 0.5) * (100 / scale) + 50;
    const y = ((row + (Math.floor(sample / SAMPLES) + 0.5) / SAMPLES) / size - 0.5) * (100 / scale) + 50;
    if (SHAPES.some((shape) => isInside(shape, x, y))) hits += 1;
  }
  return hits / (SAMPLES * SAMPLES);
}

const channels = (colour: string): readonly number[] =>
  [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));

/** A PNG file of this size (PNG specification, W3C, second edition: true colour, 8 bit, no filter). */
export function drawPng(size: number, scale: number): Buffer {
  const [paper, ink] = [channels(PAPER), channels(INK)];
  const rows = Buffer.alloc(size * (1 + size * 3));
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      const share = inkAt(column, row, size, scale);
      paper.forEach((light, channel) => {
        const dark = ink[channel] ?? light;
        rows[row * (1 + size * 3) + 1 + column * 3 + channel] = Math.round(light + (dark - light) * share);
      });
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const image = deflateSync(rows, { level: 9 });
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('IDAT', image),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const whole = Buffer.alloc(body.length + 8);
  whole.writeUInt32BE(data.length, 0);
  whole.set(body, 4);
  whole.writeUInt32BE(crc32(body), body.length + 4);
  return whole;
}

/** The same drawing as SVG. */
export function drawSvg(): string {
  const paths = SHAPES.map((shape) => `M${shape.map((corner) => corner.join(' ')).join('L')}Z`).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><path fill="${PAPER}" d="M0 0H100V100H0Z"/><path fill="${INK}" d="${paths}"/></svg>\n`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = fileURLToPath(new URL('../public/', import.meta.url));
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}icon.svg`, drawSvg());
  writeFileSync(`${folder}icon-192.png`, drawPng(192, 1));
  writeFileSync(`${folder}icon-512.png`, drawPng(512, 1));
  // A maskable icon may be cut to a circle of 80 %: the drawing stays within it.
  writeFileSync(`${folder}icon-maskable-512.png`, drawPng(512, 0.72));
}
