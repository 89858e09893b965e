import { describe, expect, it } from 'vitest';
import { lifterWorlds } from '../../../../test/simulation/lifter-simulator.ts';
import { scoreLifters } from '../../../../test/simulation/score-lifters.ts';
import { scoreSides } from '../../../../test/simulation/score-sides.ts';

describe('simulated lifters whose strength is known', () => {
  const scores = new Map(lifterWorlds.map((world) => [world.name, scoreLifters(world, 40)]));

  it('[GYM-24] expected repetitions beat last time and the plain equations where logs are as logs are', () => {
    for (const name of ['trained', 'rough']) {
      const score = scores.get(name);
      expect(score?.sets).toBeGreaterThan(500);
      expect((score?.ours ?? 9) / (score?.lastTime ?? 1)).toBeLessThan(0.6);
      expect((score?.ours ?? 9) / (score?.equations ?? 1)).toBeLessThan(0.8);
    }
  });

  it('[GYM-24] and they match the best plain one where every set goes to failure and is noted', () => {
    const tidy = scores.get('tidy');
    expect(tidy?.ours).toBeLessThan(1.15);
    expect((tidy?.ours ?? 9) / (tidy?.equations ?? 1)).toBeLessThan(1.05);
  });

  it('[GYM-24] nine of ten sets fall inside the interval, whatever the log is like', () => {
    for (const { covered } of scores.values()) {
      expect(covered).toBeGreaterThan(0.86);
      expect(covered).toBeLessThan(0.985);
    }
  });

  it('[GYM-40] strength kept over a preparation is known to about two points, and the interval holds', () => {
    for (const { keptPoints, keptCovered } of scores.values()) {
      expect(keptPoints).toBeLessThan(2.6);
      expect(keptCovered).toBeGreaterThan(0.82);
    }
  });
});

describe('simulated lifters whose sides are known', () => {
  it('[GYM-51] equal sides are called unequal at most as often as the interval says', () => {
    for (const world of lifterWorlds) {
      const { calledLeft, calledRight, percent } = scoreSides(world, 40, 0);
      expect(calledLeft + calledRight).toBeLessThanOrEqual(0.125);
      expect(Math.abs(percent)).toBeLessThan(1);
    }
  });

  it('[GYM-51] a side 8 % weaker is found by its size, and more often than by one set of each and the mark of ten', () => {
    for (const world of lifterWorlds) {
      const score = scoreSides(world, 40, 0.08);
      expect(score.calledLeft).toBeGreaterThan(0.8);
      expect(score.calledLeft).toBeGreaterThan(score.plainLeft);
      expect(score.calledRight).toBe(0);
      expect(Math.abs(score.percent - 8)).toBeLessThan(1);
    }
  });
});
