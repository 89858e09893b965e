import type { BodyReference } from '#core/body/day-balance.ts';
import { STATE_SIZE } from '#core/body/state-layout.ts';
import { randomStream } from '#core/random/random-stream.ts';
import { triangularRoot } from './triangular-root.ts';
import type { Standing, StandingMember } from './standing.ts';

/** Possible bodies on the last day known, equally likely, one state vector after the other. */
export interface Starts {
  readonly count: number;
  readonly states: Float64Array;
  /** Which member of the standing each path was drawn from. */
  readonly members: Uint8Array;
  readonly references: readonly BodyReference[];
  readonly driftSdKcal: readonly number[];
  readonly slowWaterSdKg: readonly number[];
  readonly beforeFood: readonly boolean[];
}

/**
 * Draws starts in mirrored pairs (a draw and its opposite), so that means carry little noise. Members are dealt by a
 * low-discrepancy sequence: any even number of first paths stands for the whole, which lets a what-if use fewer.
 */
export function drawStarts(standing: Standing, count: number, seed: number): Starts {
  const { members } = standing;
  const states = new Float64Array(count * STATE_SIZE);
  const dealt = new Uint8Array(count);
  const stream = randomStream(seed, 'course/starts');
  const roots = members.map((member) => triangularRoot(member.belief.covariance, STATE_SIZE));
  const draw = new Float64Array(STATE_SIZE);
  for (let pair = 0; 2 * pair < count; pair++) {
    const k = memberAt(members, radicalInverse(pair));
    const member = members[k];
    const root = roots[k];
    if (!member || !root) continue;
    for (let i = 0; i < STATE_SIZE; i++) draw[i] = stream.normal();
    for (const [path, sign] of [
      [2 * pair, 1],
      [2 * pair + 1, -1],
    ] as const) {
      if (path >= count) continue;
      dealt[path] = k;
      place(states, path * STATE_SIZE, member, root, draw, sign);
    }
  }
  return {
    count,
    states,
    members: dealt,
    references: members.map((member) => member.reference),
    driftSdKcal: members.map((member) => member.driftSdKcal),
    slowWaterSdKg: members.map((member) => member.slowWaterSdKg),
    beforeFood: members.map((member) => member.beforeFood),
  };
}

function place(
  states: Float64Array,
  at: number,
  member: StandingMember,
  root: Float64Array,
  draw: Float64Array,
  sign: number,
): void {
  const { mean } = member.belief;
  for (let i = 0; i < STATE_SIZE; i++) {
    let sum = 0;
    for (let j = 0; j <= i; j++) sum += (root[i * STATE_SIZE + j] ?? 0) * (draw[j] ?? 0);
    states[at + i] = (mean[i] ?? 0) + sign * sum;
  }
}

function memberAt(members: readonly StandingMember[], share: number): number {
  let sum = 0;
  for (let k = 0; k < members.length; k++) {
    sum += members[k]?.weight ?? 0;
    if (share < sum) return k;
  }
  return members.length - 1;
}

/** Van der Corput sequence in base 2 (radical inverse), shifted off zero. */
function radicalInverse(index: number): number {
  let result = 0;
  let share = 0.5;
  for (let n = index; n > 0; n >>= 1) {
    if (n & 1) result += share;
    share /= 2;
  }
  return result + 2 ** -20;
}
