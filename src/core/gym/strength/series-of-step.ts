import type { BodySide } from '#core/journal/kinds/gym-scheme.ts';
import type { LoggedSet, StrengthLog, StrengthSeries } from './strength-log.ts';

export interface SeriesWanted {
  readonly exercise: string;
  readonly side: BodySide | undefined;
  /** The machine it is done on now, where it is known. */
  readonly machine?: string | undefined;
}

/**
 * The series a set to come compares with (GYM-23): same exercise, same side, on this machine where one is named, else
 * the one trained last. Undefined where nothing comparable was ever done.
 */
export function seriesOf(
  log: StrengthLog,
  { exercise, side, machine }: SeriesWanted,
): StrengthSeries | undefined {
  const candidates = log.series.filter((series) => series.exercise === exercise && series.side === side);
  const here =
    machine === undefined ? [] : candidates.filter(({ sets }) => sets.some((set) => isOn(set, machine)));
  return (here.length > 0 ? here : candidates).reduce<StrengthSeries | undefined>(
    (latest, series) => (latest && lastMs(latest) >= lastMs(series) ? latest : series),
    undefined,
  );
}

function isOn({ fact }: LoggedSet, machine: string): boolean {
  const { load } = fact.data;
  return (load.of === 'pegs' || load.of === 'stack') && load.machine === machine;
}

function lastMs({ sets }: StrengthSeries): number {
  return sets.at(-1)?.fact.epochMs ?? 0;
}
