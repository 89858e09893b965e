import { kilogramsToPounds } from '#core/units/mass.ts';
import { parseDate } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { Centimetres, DayNumber, Kilograms } from '#core/units/quantities.ts';
import type { EstimateDay } from './estimate-request.ts';

/**
 * A weight that cannot be what it says. `pounds`: it stands to the readings around it as pounds to kilograms, or no
 * reading contradicts it but no adult of that height weighs so much in kilograms; the app asks. `slip`: it is far from
 * the readings around it in some other way.
 */
export interface DoubtfulWeight {
  readonly index: number;
  readonly date: string;
  readonly weightKg: Kilograms;
  readonly reason: 'pounds' | 'slip';
  /** The mass if it was typed in pounds. */
  readonly asPoundsKg: Kilograms;
  /** Whether other readings contradict it: then the estimate leaves it out. */
  readonly contradicted: boolean;
}

const POUNDS_PER_KILOGRAM = kilogramsToPounds(1);
/** Readings up to this many days away are held against a reading. */
const NEIGHBOUR_DAYS = 21;
/** How near to 2.2 the ratio must be to count as pounds, a share. */
const RATIO_TOLERANCE = 0.06;
/** A reading off by more than this share of its neighbours' median is a slip; no body does that in weeks. */
const SLIP_SHARE = 0.12;
/** Above this body-mass index a lone reading is asked about, if in pounds it makes an ordinary adult. */
const ASKED_INDEX = 45;
const ORDINARY_INDEX = { low: 16, high: 40 } as const;

/** Weights plausibly typed in pounds where kilograms were asked for, and other slips, in order of their rows. */
export function suspectUnits(days: readonly EstimateDay[], heightCm: Centimetres): DoubtfulWeight[] {
  const readings = days.flatMap(({ date, weightKg }, index): Reading[] =>
    weightKg === undefined ? [] : [{ index, date, weightKg, dayNumber: parseDate(date) ?? 0 }],
  );
  let from = 0;
  return readings.flatMap((reading, at) => {
    const near = (other: Reading | undefined): boolean =>
      other !== undefined && Math.abs(other.dayNumber - reading.dayNumber) <= NEIGHBOUR_DAYS;
    while (!near(readings[from])) from += 1;
    const around: number[] = [];
    for (let k = from; near(readings[k]); k++) if (k !== at) around.push(readings[k]?.weightKg ?? 0);
    return doubtOf(reading, median(around), heightCm) ?? [];
  });
}

interface Reading {
  readonly index: number;
  readonly date: string;
  readonly weightKg: Kilograms;
  readonly dayNumber: DayNumber;
}

function doubtOf(
  { index, date, weightKg }: Reading,
  middleKg: Kilograms | undefined,
  heightCm: Centimetres,
): DoubtfulWeight | undefined {
  const asPoundsKg = roundTo(weightKg / POUNDS_PER_KILOGRAM, 1);
  if (middleKg !== undefined && Math.abs(weightKg / middleKg - 1) > SLIP_SHARE) {
    const ratio = weightKg / middleKg / POUNDS_PER_KILOGRAM;
    const reason = Math.abs(ratio - 1) <= RATIO_TOLERANCE ? 'pounds' : 'slip';
    return { index, date, weightKg, reason, asPoundsKg, contradicted: true };
  }
  const square = (heightCm / 100) ** 2;
  const inPounds = asPoundsKg / square;
  const ordinary = inPounds >= ORDINARY_INDEX.low && inPounds <= ORDINARY_INDEX.high;
  if (weightKg / square <= ASKED_INDEX || !ordinary) return undefined;
  return { index, date, weightKg, reason: 'pounds', asPoundsKg, contradicted: false };
}

function median(values: readonly number[]): number | undefined {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length / 2;
  const upper = sorted[Math.floor(middle)];
  const lower = sorted[Math.ceil(middle) - 1];
  return upper === undefined || lower === undefined ? undefined : (upper + lower) / 2;
}
