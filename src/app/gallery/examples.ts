import { examples as charts } from '../charts/charts.examples.tsx';
import { examples as buttons } from '../parts/button.examples.tsx';
import { examples as fields } from '../parts/fields.examples.tsx';
import { examples as figures } from '../parts/figure.examples.tsx';
import { examples as forms } from '../parts/form.examples.tsx';
import { examples as gauges } from '../parts/gauges.examples.tsx';
import { examples as lists } from '../parts/list.examples.tsx';
import { examples as pages } from '../parts/page.examples.tsx';
import { examples as runSheets } from '../parts/run-sheet.examples.tsx';
import { examples as scales } from '../parts/scale-display.examples.tsx';
import { examples as searches } from '../parts/search-field.examples.tsx';
import { examples as words } from '../parts/words.examples.tsx';
import { examples as prints } from '../print/print.examples.tsx';
import { examples as shells } from '../shell/shell.examples.tsx';
import type { Example } from './example.ts';

export interface Shelf {
  readonly title: string;
  /** Addresses the shelf: "#/figures". */
  readonly path: string;
  readonly examples: readonly Example[];
}

/** Every part of the interface, by kind. */
export const SHELVES: readonly Shelf[] = [
  { title: 'Figures', path: 'figures', examples: figures },
  { title: 'Buttons', path: 'buttons', examples: buttons },
  { title: 'Run sheet', path: 'run-sheet', examples: runSheets },
  { title: 'Scale', path: 'scale', examples: scales },
  { title: 'Gauges', path: 'gauges', examples: gauges },
  { title: 'Charts', path: 'charts', examples: charts },
  { title: 'Fields', path: 'fields', examples: [...fields, ...searches, ...forms] },
  { title: 'Lists', path: 'lists', examples: lists },
  { title: 'Words', path: 'words', examples: words },
  { title: 'Print', path: 'print', examples: prints },
  { title: 'Frame', path: 'frame', examples: [...shells, ...pages] },
];
