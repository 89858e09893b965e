import { describe, expect, it } from 'vitest';
import { randomStream } from '#core/random/random-stream.ts';
import { JACOBIAN_SIZE, moveCovariance, restingPlaces, transitionOf } from './day-transition.ts';
import { gaussian } from './gaussian.ts';
import { propagateCovariance } from './kalman.ts';
import { STATE, STATE_SIZE } from './state-layout.ts';

/** A covariance: the product of a random matrix with its transpose, with some states known for certain. */
function covariance(seed: number, certain: ReadonlySet<number>): Float64Array {
  const stream = randomStream(seed, 'covariance');
  const root = Float64Array.from({ length: STATE_SIZE ** 2 }, (_, at) =>
    certain.has(Math.floor(at / STATE_SIZE)) ? 0 : stream.normal(),
  );
  const product = new Float64Array(STATE_SIZE ** 2);
  for (let i = 0; i < STATE_SIZE; i++)
    for (let j = 0; j < STATE_SIZE; j++)
      for (let k = 0; k < STATE_SIZE; k++)
        product[i * STATE_SIZE + j] =
          (product[i * STATE_SIZE + j] ?? 0) +
          (root[i * STATE_SIZE + k] ?? 0) * (root[j * STATE_SIZE + k] ?? 0);
  return product;
}

describe('the covariance of a day, written out', () => {
  const unused = new Set<number>([STATE.cycle, STATE.creatine, STATE.scaleOffset, STATE.firstMethod + 3]);

  it("[EST-11] is the plain product A P A' to rounding, for any derivative", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const stream = randomStream(seed, 'jacobian');
      const jacobian = Float64Array.from({ length: JACOBIAN_SIZE }, () => stream.normal());
      const start = covariance(seed, unused);
      const plain = gaussian(STATE_SIZE);
      plain.covariance.set(start);
      propagateCovariance(plain, transitionOf(jacobian));
      const fast = start.slice();
      moveCovariance(fast, jacobian, restingPlaces(unused), new Float64Array(STATE_SIZE ** 2));
      let worst = 0;
      for (let at = 0; at < fast.length; at++)
        worst = Math.max(worst, Math.abs((fast[at] ?? 0) - (plain.covariance[at] ?? 0)));
      expect(worst, `seed ${seed}`).toBeLessThan(1e-9);
    }
  });
});
