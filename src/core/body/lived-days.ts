import { formatDate, parseDate } from '#core/units/civil-date.ts';
import type { DayNumber, Kilocalories, Kilograms, Percent } from '#core/units/quantities.ts';
import { BELIEFS } from './beliefs.ts';
import type { EstimateDay } from './estimate-request.ts';
import type { Row } from './gaussian.ts';
import type { MethodInUse } from './methods-in-use.ts';
import type { WaterShares } from './moving-water.ts';
import type { LoadedDay } from './predict-day.ts';
import { massRow } from './take-in.ts';

/** How the day's intake is known. `nothing-before`: not logged, and no logged day before it either. */
export type IntakeBasis = 'logged' | 'unlogged' | 'nothing-before' | 'zero' | 'doubtful';

/** One civil day as the filter meets it. Every date from the first row on has one, with or without a row. */
export interface LivedDay {
  readonly date: string;
  readonly dayNumber: DayNumber;
  readonly basis: IntakeBasis;
  /** Energy is NaN where the basis is `nothing-before`: the filter puts in what it believes is spent. */
  readonly load: Readonly<LoadedDay>;
  readonly mass: Row;
  readonly travelling: boolean;
  readonly weightKg: Kilograms | undefined;
  readonly bodyFat:
    | { readonly percent: Percent; readonly place: number; readonly repeatPercent: Percent }
    | undefined;
}

/** Days looked back on for what an unlogged day may have been. */
const RECENT_DAYS = 21;
/** Logged days needed before their average stands in for an unlogged day. */
const LEAST_LOGGED_DAYS = 3;
/** A log below this share of the recent average may be half a day. */
const DOUBTFUL_SHARE = 0.4;
/** Spread of a day of which nothing is known, a share. Common practice, no source. */
const UNKNOWN_SHARE = 0.25;
/** Spread of a day logged as zero: a fast or a log that was left empty. */
const ZERO_SHARE = 0.5;
/** Days away in a row are off to one side together: their spread grows up to this many times. */
const MOST_RUN_GROWTH = 2.5;

/**
 * Lays the rows out day by day; rows after `asOf` are the plan and taken as they stand. What stands in for an unlogged day is known on that day: the average of the logged
 * days before it, never later ones.
 */
export function livedDays(
  rows: readonly EstimateDay[],
  methods: readonly MethodInUse[],
  water: WaterShares,
  asOf: DayNumber,
): LivedDay[] {
  const byDate = new Map(rows.map((row) => [row.date, row]));
  const first = parseDate(rows[0]?.date ?? '') ?? 0;
  const last = Math.max(asOf, parseDate(rows.at(-1)?.date ?? '') ?? first);
  const recent: LoadedDay[] = [];
  const days: LivedDay[] = [];
  let unloggedInARow = 0;
  for (let dayNumber = first; dayNumber <= last; dayNumber++) {
    const date = formatDate(dayNumber);
    const row = byDate.get(date) ?? { date };
    unloggedInARow = row.intake ? 0 : unloggedInARow + 1;
    const logged = row.intake && asLogged(row.intake, row.cardioKcal ?? 0);
    const { basis, load } =
      logged && (dayNumber > asOf || row.confirmed)
        ? { basis: 'logged' as const, load: logged }
        : loadOf(row, logged, recent, unloggedInARow);
    if (logged && logged.energyKcal > 0) {
      recent.push(logged);
      if (recent.length > RECENT_DAYS) recent.shift();
    }
    days.push({
      date,
      dayNumber,
      basis,
      load,
      mass: massRow(water.cycle(date), water.creatine(date)),
      travelling: row.travelling ?? false,
      weightKg: row.weightKg,
      bodyFat: bodyFatOf(row, methods),
    });
  }
  return days;
}

function asLogged(intake: NonNullable<EstimateDay['intake']>, cardioKcal: Kilocalories): LoadedDay {
  return {
    energyKcal: intake.energyKcal,
    carbohydrateKcal: 4 * intake.carbohydrateG,
    sodiumMg: intake.sodiumMg ?? Number.NaN,
    cardioKcal,
    logErrorSd: BELIEFS.logErrorShare,
  };
}

function loadOf(
  row: EstimateDay,
  logged: LoadedDay | undefined,
  recent: readonly LoadedDay[],
  unloggedInARow: number,
): { basis: IntakeBasis; load: LoadedDay } {
  const cardioKcal = row.cardioKcal ?? 0;
  const usual = usualOf(recent);
  if (logged && logged.energyKcal > 0) {
    if (!usual || logged.energyKcal >= DOUBTFUL_SHARE * usual.energyKcal)
      return { basis: 'logged', load: logged };
    return { basis: 'doubtful', load: halfway(logged, usual) };
  }
  const nothing = { sodiumMg: Number.NaN, cardioKcal };
  if (!usual) {
    const unknown = { energyKcal: Number.NaN, carbohydrateKcal: Number.NaN, logErrorSd: UNKNOWN_SHARE };
    return { basis: logged ? 'zero' : 'nothing-before', load: { ...unknown, ...nothing } };
  }
  const growth = Math.min(MOST_RUN_GROWTH, Math.sqrt(unloggedInARow));
  const logErrorSd = logged ? ZERO_SHARE : Math.hypot(BELIEFS.unloggedShare, usual.spreadShare) * growth;
  const { energyKcal, carbohydrateKcal } = usual;
  return {
    basis: logged ? 'zero' : 'unlogged',
    load: { energyKcal, carbohydrateKcal, logErrorSd, ...nothing },
  };
}

interface Usual {
  readonly energyKcal: number;
  readonly carbohydrateKcal: number;
  readonly spreadShare: number;
}

function usualOf(recent: readonly LoadedDay[]): Usual | undefined {
  const count = recent.length;
  if (count < LEAST_LOGGED_DAYS) return undefined;
  let energyKcal = 0;
  let carbohydrateKcal = 0;
  for (const day of recent) {
    energyKcal += day.energyKcal / count;
    carbohydrateKcal += day.carbohydrateKcal / count;
  }
  let square = 0;
  for (const day of recent) square += (day.energyKcal - energyKcal) ** 2 / count;
  return { energyKcal, carbohydrateKcal, spreadShare: Math.sqrt(square) / energyKcal };
}

/** A log far below the usual: midway between what is written and the usual day, with a spread that covers both. */
function halfway(load: LoadedDay, usual: Usual): LoadedDay {
  const energyKcal = (load.energyKcal + usual.energyKcal) / 2;
  return {
    ...load,
    energyKcal,
    carbohydrateKcal: (load.carbohydrateKcal + usual.carbohydrateKcal) / 2,
    sodiumMg: Number.NaN,
    logErrorSd: (usual.energyKcal - load.energyKcal) / 2 / energyKcal,
  };
}

function bodyFatOf(row: EstimateDay, methods: readonly MethodInUse[]): LivedDay['bodyFat'] {
  const { bodyFat } = row;
  if (!bodyFat) return undefined;
  const used = methods.find(({ words }) => words.has(bodyFat.method));
  if (!used) return undefined;
  return { percent: bodyFat.percent, place: used.place, repeatPercent: used.method.repeatPercent };
}
