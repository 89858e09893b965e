import { describe, expect, test } from 'vitest';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { isKnownKind } from './kinds/registry.ts';
import { newestVersion, upgrade, upgradeSteps, type UpgradeStep } from './upgrades.ts';

/** An example of old and new data for every registered step: "kind from" -> [before, after]. */
const examples: Readonly<Record<string, readonly [before: object, after: object]>> = {};

const steps: readonly UpgradeStep[] = [
  { kind: 'moon-seen', from: 2, step: (data) => ({ ...data, third: true }) },
  { kind: 'moon-seen', from: 1, step: (data) => ({ ...data, second: true }) },
  { kind: 'tide-seen', from: 1, step: () => ({}) },
];

describe('upgrades', () => {
  test('[JRN-10] every registered step is exercised by an example, has a known kind, and follows on', () => {
    expect(Object.keys(examples).sort()).toEqual(upgradeSteps.map((s) => `${s.kind} ${s.from}`).sort());
    for (const step of upgradeSteps) {
      const [before, after] = examples[`${step.kind} ${step.from}`] ?? [{}, {}];
      expect(step.step({ ...before })).toEqual(after);
      expect(isKnownKind(step.kind)).toBe(true);
      for (let from = 1; from < newestVersion(step.kind); from++) {
        expect(upgradeSteps.filter((s) => s.kind === step.kind && s.from === from)).toHaveLength(1);
      }
    }
  });

  test('[JRN-10] data goes through every step from its own version on, in order', () => {
    const data = (version: number) =>
      upgrade(oneEntry({ kind: 'moon-seen', version, data: { a: 1 } }), steps);
    expect(data(1)).toEqual({ ok: true, value: { a: 1, second: true, third: true } });
    expect(data(2)).toEqual({ ok: true, value: { a: 1, third: true } });
    expect(data(3)).toEqual({ ok: true, value: { a: 1 } });
    expect(newestVersion('moon-seen', steps)).toBe(3);
  });

  test('[JRN-10] a missing step is a problem, never data half upgraded', () => {
    const gap = steps.filter((step) => step.from !== 1);
    const outcome = upgrade(oneEntry({ kind: 'moon-seen', data: { a: 1 } }), gap);
    expect(outcome.ok ? '' : outcome.problem.code).toBe('journal/no-upgrade');
  });

  test('[JRN-10] an absent version is the first', () => {
    expect(upgrade(oneEntry({ kind: 'moon-seen', data: {} }), steps)).toEqual({
      ok: true,
      value: { second: true, third: true },
    });
  });

  test('[JRN-11] a version later than the newest is refused with both versions named', () => {
    const outcome = upgrade(oneEntry({ kind: 'moon-seen', version: 4 }), steps);
    expect(outcome.ok ? '' : outcome.problem.message).toContain('(4, here 3)');
  });
});
