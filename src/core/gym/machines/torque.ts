import { readShape } from '#core/problems/from-issues.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import type { Degrees } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import { hardest, leverLoad, passesOverAt, torqueAt, workBetween, type LeverLoad } from './lever-torque.ts';
import { emphasisOf, thirdsOf } from './emphasis.ts';
import { torqueRequest, type TorqueAnswer, type TorqueRequest } from './torque-request.ts';

const MOST_POINTS = 20_000;
/** Decimals kept: far below any tape or level, far above the dust of fractions (cos 90 degrees is 6e-17). */
const DECIMALS = 9;
/** Less torque than this is no resistance: a counterweight balances the lever (N m). */
const NO_TORQUE_NM = 1e-9;

/**
 * What a plate-loaded lever asks over its range (GYM-10 to GYM-13): torque, force at the pad, where it is hardest, how
 * the work is spread, where the load passes over the top. For slow repetitions; speed adds inertia that is not counted.
 * Refuses a request of another shape, a range that does not go forward, and a lever on which nothing weighs.
 */
export function torque(input: unknown): Outcome<TorqueAnswer> {
  const request = readShape(torqueRequest, input, 'gym');
  if (!request.ok) return request;
  const { range, lever, pegs, padM } = request.value;
  const points = Math.ceil((range.toDeg - range.fromDeg) / range.stepDeg);
  const load = leverLoad([lever, ...pegs]);
  const fault = faultOf(request.value, points, load);
  if (fault) return fault;
  const over = passesOverAt(load, range);
  const top = hardest(load, range);
  const turned = ((range.toDeg - range.fromDeg) * Math.PI) / 180;
  const thirdsPercent = thirdsOf(load, range);
  const answer: TorqueAnswer = {
    curve: degreesOf(range).map((deg) => {
      const torqueNm = tidy(torqueAt(load, deg));
      return { deg, torqueNm, padForceN: tidy(torqueNm / padM) };
    }),
    peak: { deg: tidy(top.deg), torqueNm: tidy(top.torqueNm) },
    meanNm: tidy(workBetween(load, range) / turned),
    thirdsPercent,
    emphasis: emphasisOf(thirdsPercent),
    ...(over === undefined ? {} : { passesOver: tidy(over) }),
    why: [],
  };
  return answered({ ...answer, why: torqueWhy(request.value, answer) });
}

function faultOf(
  { range }: TorqueRequest,
  points: number,
  load: LeverLoad,
): Outcome<TorqueAnswer> | undefined {
  if (range.toDeg <= range.fromDeg) {
    return refused(
      'gym/range-not-forward',
      'range.toDeg',
      `The movement ends at ${range.toDeg} degrees, not beyond its start at ${range.fromDeg}.`,
      'Count degrees in the direction of the lift, so that the end is greater than the start.',
    );
  }
  if (range.toDeg - range.fromDeg > 360) {
    return refused(
      'gym/more-than-a-turn',
      'range.toDeg',
      `From ${range.fromDeg} to ${range.toDeg} degrees is more than a whole turn.`,
      'Give the part of a turn that the lever moves through.',
    );
  }
  if (points > MOST_POINTS) {
    return refused(
      'gym/too-many-points',
      'range.stepDeg',
      `Steps of ${range.stepDeg} degrees make ${points} points; at most ${MOST_POINTS} are answered.`,
      'Take a wider step.',
    );
  }
  if (load.amplitudeNm > NO_TORQUE_NM) return undefined;
  return refused(
    'gym/nothing-resists',
    'pegs',
    'Nothing on this lever resists: no mass away from the pivot, or masses that balance one another.',
    'Give the lever its mass and distance, or put plates on a peg.',
  );
}

function degreesOf({ fromDeg, toDeg, stepDeg }: TorqueRequest['range']): readonly Degrees[] {
  const degrees: Degrees[] = [];
  for (let i = 0; fromDeg + i * stepDeg < toDeg - stepDeg * 1e-6; i++)
    degrees.push(tidy(fromDeg + i * stepDeg));
  return [...degrees, toDeg];
}

function tidy(value: number): number {
  return roundTo(value, DECIMALS);
}

function torqueWhy({ range, pegs, padM }: TorqueRequest, answer: TorqueAnswer): string[] {
  const { peak, passesOver, thirdsPercent, emphasis } = answer;
  const loaded = pegs
    .filter(({ massKg }) => massKg > 0)
    .map(({ name, massKg }) => `${name} ${roundTo(massKg, 2)} kg`);
  const why = [
    `${loaded.length > 0 ? `Loaded: ${loaded.join(', ')}` : 'No plates'}; from ${range.fromDeg} to ${range.toDeg} degrees, pad at ${padM} m.`,
    `Hardest at ${roundTo(peak.deg, 1)} degrees: ${roundTo(peak.torqueNm, 1)} N m, ${roundTo(peak.torqueNm / padM, 0)} N at the pad.`,
  ];
  if (thirdsPercent.every((share) => share === 0)) {
    why.push('The load pulls along over the whole range: nothing has to be lifted.');
  } else {
    const [start, middle, end] = thirdsPercent.map((share) => roundTo(share, 0));
    const where = emphasis === 'even' ? 'spread evenly' : `most of it at the ${emphasis}`;
    why.push(`Lifting work by thirds: ${start}, ${middle}, ${end} %, ${where}.`);
  }
  if (passesOver !== undefined && passesOver > range.fromDeg) {
    why.push(
      `From ${roundTo(passesOver, 1)} degrees on the load has passed over the top and pulls toward the end: stop before it, or hold it back.`,
    );
  } else if (answer.curve[0] !== undefined && answer.curve[0].torqueNm < 0) {
    why.push('At the start the load pulls along instead of resisting.');
  }
  return why;
}
