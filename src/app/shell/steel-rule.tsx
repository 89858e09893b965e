import type { JSX } from 'preact';
import { pathTo } from './route.ts';
import type { Place } from './places.ts';
import './steel-rule.css';

export interface SteelRuleProps {
  readonly places: readonly Pick<Place, 'path' | 'title'>[];
  readonly current: string;
}

/** The way around: a steel rule with a word at each mark and the index at the place where one is. */
export function SteelRule({ places, current }: SteelRuleProps): JSX.Element {
  return (
    <nav class="steel-rule" aria-label="Places">
      <ul class="steel-marks">
        {places.map((place) => (
          <li class="steel-mark" key={place.path}>
            <a
              class="steel-link"
              href={pathTo(place.path)}
              aria-current={place.path === current ? 'page' : undefined}
            >
              {place.title}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
