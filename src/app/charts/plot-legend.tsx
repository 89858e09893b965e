import type { JSX } from 'preact';
import type { PlotData } from './plot-data.ts';

/** Names each stroke by a sample of it. One series alone needs no legend: the title names it. */
export function PlotLegend({ data }: { readonly data: PlotData }): JSX.Element | null {
  const count = data.lines.length + data.dots.length + data.bands.length;
  if (count < 2) return null;
  return (
    <ul class="plot-legend">
      {data.dots.map(({ name }) => (
        <li key={name}>
          <Sample>
            <circle class="plot-dot" cx="7" cy="7" r="2.8" />
            <circle class="plot-dot" cx="21" cy="7" r="2.8" />
          </Sample>
          {name}
        </li>
      ))}
      {data.lines.map(({ name, look }) => (
        <li key={name}>
          <Sample>
            <path class={`plot-line plot-${look}`} d="M0 7H28" />
          </Sample>
          {name}
        </li>
      ))}
      {data.bands.map(({ name }, index) => (
        <li key={name}>
          <Sample>
            <g class={index === 0 && data.bands.length > 1 ? 'plot-band plot-band-outer' : 'plot-band'}>
              <path class="plot-band-fill" d="M0 1H28V13H0Z" />
              <path class="plot-band-edge" d="M0 1H28M0 13H28" />
            </g>
          </Sample>
          {name}
        </li>
      ))}
    </ul>
  );
}

function Sample({ children }: { readonly children: JSX.Element | readonly JSX.Element[] }): JSX.Element {
  return (
    <svg width="28" height="14" viewBox="0 0 28 14" aria-hidden="true">
      {children}
    </svg>
  );
}
