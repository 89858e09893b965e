import { answered, refused, type Outcome } from '#core/problems/problem.ts';

/** How much finer than the screen the picture is drawn. */
const FINER = 2;

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
  'font-size',
  'font-weight',
  'paint-order',
] as const;

/** Draws an SVG of the page into a PNG on this device. */
export async function pictureOf(drawing: SVGSVGElement): Promise<Outcome<Blob>> {
  const { width, height } = drawing.getBoundingClientRect();
  const url = URL.createObjectURL(
    new Blob([standingAlone(drawing, width, height)], { type: 'image/svg+xml' }),
  );
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(FINER * width);
    canvas.height = Math.round(FINER * height);
    const paper = canvas.getContext('2d');
    if (!paper) return noPicture();
    paper.fillStyle = getComputedStyle(drawing).getPropertyValue('--sheet') || 'white';
    paper.fillRect(0, 0, canvas.width, canvas.height);
    paper.drawImage(image, 0, 0, canvas.width, canvas.height);
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
