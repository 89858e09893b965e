import type { JSX } from 'preact';
import './site-drawing.css';

export interface SiteMark {
  readonly key: string;
  readonly number: number;
  readonly x: number;
  readonly y: number;
}

export interface SiteDrawingProps {
  readonly title: string;
  readonly marks: readonly SiteMark[];
}

const WIDTH = 120;
const HEIGHT = 260;

/** Half of a standing figure as an open path from crown to crotch, mirrored for the other half: head, neck, shoulder, arm, trunk, leg. */
const HALF =
  'M60 8 C68 8 73 15 73 23 C73 30 70 36 66 39 L66 46 C74 49 86 50 91 55 C96 62 98 80 100 98 C101 112 102 124 101 134 C101 139 96 139 95 134 C93 120 90 106 87 94 L85 74 C84 86 82 98 81 108 C82 118 85 128 85 140 C85 160 81 180 79 196 C80 210 79 224 77 240 C77 246 72 248 66 247 C65 236 66 222 65 208 C64 190 62 168 60 148';

/** A plain figure with numbered marks, to find a site by eye; the list beside it says the same in words. */
export function SiteDrawing({ title, marks }: SiteDrawingProps): JSX.Element {
  return (
    <svg class="site-drawing" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={title}>
      {[undefined, `translate(${WIDTH} 0) scale(-1 1)`].map((mirror) => (
        <g key={mirror ?? ''} transform={mirror}>
          <path class="site-body" d={`${HALF} Z`} />
          <path class="site-outline" d={HALF} />
        </g>
      ))}
      {marks.map(({ key, number, x, y }) => (
        <g key={key}>
          <circle class="site-mark" cx={x * WIDTH} cy={y * HEIGHT} r="7" />
          <text class="site-number" x={x * WIDTH} y={y * HEIGHT + 3.4} text-anchor="middle">
            {number}
          </text>
        </g>
      ))}
    </svg>
  );
}
