import type { Kilograms, Percent } from '#core/units/quantities.ts';
import { BELIEFS } from './beliefs.ts';
import { meanAlong, type Row, spread, varianceAlong } from './gaussian.ts';
import { GLYCOGEN_WITH_WATER } from './glycogen-water.ts';
import { logDensity, type Update, update } from './kalman.ts';
import type { Member } from './member.ts';
import { STATE } from './state-layout.ts';

/** Readings in a row on one side that are taken as a new level rather than as slips. */
const NEW_LEVEL_READINGS = 3;
/** Below this chance of being an ordinary reading, a reading counts as not believed. */
const BELIEVED = 0.3;

/** Places and factors of whole-body mass on a day, given how much water of the cycle and of creatine is there. */
export function massRow(cycleShare: number, creatineShare: number): Row {
  return {
    places: [
      STATE.fat,
      STATE.lean,
      STATE.glycogen,
      STATE.fluid,
      STATE.slowWater,
      STATE.cycle,
      STATE.creatine,
    ],
    factors: [1, 1, GLYCOGEN_WITH_WATER, 1, 1, cycleShare, creatineShare],
  };
}

/** A reading of the scale with what it needs to be read. */
export interface WeightReading {
  readonly weightKg: Kilograms;
  readonly mass: Row;
  /** Day number modulo 7. */
  readonly weekday: number;
  readonly travelling: boolean;
  readonly first: boolean;
}

/** How a reading was taken in: the update, and the chance that the reading was an ordinary one. */
export interface TakenIn {
  readonly update: Update;
  readonly ordinary: number;
}

/**
 * A weigh-in. Tails are heavy: a reading is ordinary or stray, and its weight in the update is the chance that it is
 * ordinary. Three strays in a row on one side are a new level (another scale, water that stays), and are believed.
 */
export function takeInWeight(member: Member, reading: WeightReading): TakenIn {
  const { belief, hypothesis } = member;
  const row = scaleRow(reading);
  const innovation = reading.weightKg - meanAlong(belief, row);
  const noise = hypothesis.scaleSdKg ** 2;
  const stray = noise + BELIEFS.strayWeight.sdKg ** 2;
  if (reading.first) {
    const variance = hypothesis.firstReadingStray ? stray : noise;
    member.logWeight += logDensity(innovation, varianceAlong(belief, row) + variance);
    return {
      update: update(belief, row, innovation, variance),
      ordinary: hypothesis.firstReadingStray ? 0 : 1,
    };
  }
  const ordinary = weighTails(member, row, innovation, noise, stray, BELIEFS.strayWeight.share);
  if (isNewLevel(member, ordinary, Math.sign(innovation))) {
    spread(belief, { places: [STATE.lean], factors: [1] }, 0.7 ** 2);
    spread(belief, { places: [STATE.slowWater], factors: [1] }, 0.7 ** 2);
    return { update: update(belief, row, innovation, noise), ordinary: 1 };
  }
  const blended = 1 / (ordinary / noise + (1 - ordinary) / stray);
  return { update: update(belief, row, innovation, blended), ordinary };
}

function scaleRow({ mass, weekday, travelling }: WeightReading): Row {
  const angle = (2 * Math.PI * weekday) / 7;
  return {
    places: [...mass.places, STATE.gut, STATE.weekCosine, STATE.weekSine, STATE.scaleOffset],
    factors: [...mass.factors, 1, Math.cos(angle), Math.sin(angle), travelling ? 1 : 0],
  };
}

function isNewLevel(member: Member, ordinary: number, side: number): boolean {
  if (ordinary >= BELIEVED) {
    member.straysInARow = 0;
    return false;
  }
  member.straysInARow = member.straysInARow * side > 0 ? member.straysInARow + side : side;
  if (Math.abs(member.straysInARow) < NEW_LEVEL_READINGS) return false;
  member.straysInARow = 0;
  return true;
}

/** Adds the reading's likelihood to the member's weight; answers the chance that it is an ordinary reading. */
function weighTails(
  member: Member,
  row: Row,
  innovation: number,
  noise: number,
  stray: number,
  strayShare: number,
): number {
  const known = varianceAlong(member.belief, row);
  const asOrdinary = Math.log(1 - strayShare) + logDensity(innovation, known + noise);
  const asStray = Math.log(strayShare) + logDensity(innovation, known + stray);
  const most = Math.max(asOrdinary, asStray);
  const sum = most + Math.log(Math.exp(asOrdinary - most) + Math.exp(asStray - most));
  member.logWeight += sum;
  return Math.exp(asOrdinary - sum);
}

/** A body-fat reading: 100 fat / mass plus the method's own bias, with the method's own error. */
export function takeInBodyFat(
  member: Member,
  percent: Percent,
  mass: Row,
  biasPlace: number,
  repeatPercent: Percent,
): TakenIn {
  const { belief } = member;
  const massKg = meanAlong(belief, mass);
  const fatKg = belief.mean[STATE.fat] ?? 0;
  const perMass = (-100 * fatKg) / (massKg * massKg);
  const row: Row = {
    places: [...mass.places, STATE.fat, biasPlace],
    factors: [...mass.factors.map((factor) => factor * perMass), 100 / massKg, 1],
  };
  const innovation = percent - (100 * fatKg) / massKg - (belief.mean[biasPlace] ?? 0);
  const noise = repeatPercent ** 2;
  const { share, sdPercent } = BELIEFS.strayBodyFat;
  const stray = noise + sdPercent ** 2;
  const ordinary = weighTails(member, row, innovation, noise, stray, share);
  const blended = 1 / (ordinary / noise + (1 - ordinary) / stray);
  return { update: update(belief, row, innovation, blended), ordinary };
}
