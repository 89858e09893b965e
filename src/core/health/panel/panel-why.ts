import type { DerivedPanel } from './derivations.ts';
import type { PanelView } from './panel-view.ts';
import { sayUnit, sayValue, type PanelResult } from './reading.ts';

/** The sentences with the numbers that decided, urgent values first. */
export function panelWhy(view: PanelView, derived: DerivedPanel): string[] {
  const counted = (flag: string) => view.results.filter((result) => result.flag === flag);
  const [now, low, high] = [counted('seek care now'), counted('low'), counted('high')];
  const open = view.results.filter((result) => result.flag === undefined).length;
  return [
    `${view.results.length} values read: ${now.length} that need care now, ${low.length} low, ${high.length} high, ${open} not judged.`,
    ...[...now, ...low, ...high].map(placeSentence),
    ...view.results.filter((result) => result.change?.real).map(changeSentence),
    ...intervalSentence(view),
    ...derived.derived.flatMap(({ name, notes }) => notes.map((note) => `${name}: ${note}`)),
    ...derived.withheld.map(({ name, reason }) => `${name}: ${reason}`),
  ];
}

function placeSentence(result: PanelResult): string {
  const { low, high, own } = result.interval ?? {};
  const range = `${low ?? ''}${low !== undefined && high !== undefined ? ' to ' : low === undefined ? 'up to ' : ' and more'}${high ?? ''}`;
  const against = result.interval
    ? ` against ${range} ${sayUnit(result.read.unit)} (${own ? "the laboratory's own interval" : "the table's interval"})`
    : '';
  return `${sayValue(result.read)}: ${result.flag}${against}.`;
}

function changeSentence(result: PanelResult): string {
  const change = result.change;
  if (!change) return '';
  const moved = change.percent > 0 ? 'rose' : 'fell';
  return `${result.read.name} ${moved} ${Math.abs(change.percent).toFixed(1)} % since ${change.since}; more than ${change.rcvPercent.toFixed(1)} % is a real change.`;
}

function intervalSentence(view: PanelView): string[] {
  const own = view.results.filter((result) => result.interval?.own).length;
  const table = view.results.filter((result) => result.interval && !result.interval.own).length;
  return [
    `Intervals: ${own} of the laboratory, which go first, ${table} from the table here; lists differ between laboratories.`,
  ];
}
