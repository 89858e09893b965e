import { kilogramsToPounds } from '#core/units/mass.ts';
import { daysBetween } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { Centimetres, Kilograms } from '#core/units/quantities.ts';
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
  const readings = days.flatMap(({ date, weightKg }, index) =>
    weightKg === undefined ? [] : [{ index, date, weightKg }],
  );
  return readings.flatMap((reading): DoubtfulWeight[] => {
    const around = readings.filter(
      ({ index, date }) =>
        index !== reading.index && Math.abs(daysBetween(reading.date, date)) <= NEIGHBOUR_DAYS,
    );
    const asPoundsKg = roundTo(reading.weightKg / POUNDS_PER_KILOGRAM, 1);
    const middle = median(around.map(({ weightKg }) => weightKg));
    const contradicted = middle !== undefined && Math.abs(reading.weightKg / middle - 1) > SLIP_SHARE;
    if (contradicted) {
      const ratio = reading.weightKg / middle / POUNDS_PER_KILOGRAM;
      const reason = Math.abs(ratio - 1) <= RATIO_TOLERANCE ? 'pounds' : 'slip';
      return [{ ...reading, reason, asPoundsKg, contradicted }];
    }
    const square = (heightCm / 100) ** 2;
    const inPounds = asPoundsKg / square;
    const asked =
      reading.weightKg / square > ASKED_INDEX &&
      inPounds >= ORDINARY_INDEX.low &&
      inPounds <= ORDINARY_INDEX.high;
    return asked ? [{ ...reading, reason: 'pounds', asPoundsKg, contradicted }] : [];
  });
}

function median(values: readonly number[]): number | undefined {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length / 2;
  const upper = sorted[Math.floor(middle)];
  const lower = sorted[Math.ceil(middle) - 1];
  return upper === undefined || lower === undefined ? undefined : (upper + lower) / 2;
}
