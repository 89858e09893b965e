import { describe, expect, it } from 'vitest';
import { composeEntry } from '../compose-entry.ts';
import type { DataOf } from './registry.ts';

const AT_MS = Date.UTC(2027, 2, 1, 17);
const squat: DataOf<'set-done'> = {
  session: 'monday',
  exercise: 'back-squat',
  set: 'working',
  load: { of: 'kg', kg: 100 },
  reps: 5,
};

function compose(change: Partial<DataOf<'set-done'>>) {
  return composeKind('set-done', { ...squat, ...change });
}

function composeKind<Kind extends 'set-done' | 'session-planned'>(kind: Kind, data: DataOf<Kind>) {
  return composeEntry({
    kind,
    data,
    day: '2027-03-01',
    atMs: AT_MS,
    nowMs: AT_MS,
    offsetMinutes: 0,
    zone: 'UTC',
    device: 'phone',
    writer: 'phonephone',
    random: new Uint8Array(10),
    latestStamp: undefined,
  });
}

describe('a set as it is written down', () => {
  it('[GYM-08] is taken as it was, a missed lift and an empty bar too', () => {
    for (const change of [{}, { reps: 0 }, { load: { of: 'kg', kg: 0 } } as const, { rir: 2.5 }])
      expect(compose(change).ok).toBe(true);
  });

  it.each([
    [{ load: { of: 'kg', kg: 1000 } }, 'load.kg', 'Make it kilograms from 0 to 800.'],
    [{ load: { of: 'kg', kg: -20 } }, 'load.kg', 'Make it kilograms from 0 to 800.'],
    [{ reps: -5 }, 'reps', 'Make it whole repetitions from 0 to 200.'],
    [{ reps: 7.5 }, 'reps', 'Make it whole repetitions from 0 to 200.'],
    [{ rir: -1 }, 'rir', 'Make it repetitions in reserve from 0 to 10.'],
    [{ load: { of: 'pegs', machine: 'press', pegs: [] } }, 'load.pegs', 'Make it at least 1.'],
  ] as const)('[GYM-08] %j names the field and what it takes', (change, path, remedy) => {
    const entry = compose(change as Partial<DataOf<'set-done'>>);
    if (entry.ok) throw new Error('it was taken');
    expect(entry.problem).toMatchObject({ path, remedy });
  });
});

describe('a template as it is written down', () => {
  it('[GYM-08] with fewest repetitions above their most is refused; one number is a range too', () => {
    const template = (min: number, max: number): DataOf<'session-planned'> => ({
      template: 'legs',
      name: 'Legs',
      blocks: [
        {
          block: 'a',
          slots: [
            { slot: 's', exercise: 'back-squat', sets: [{ set: 'top', count: 1, reps: { min, max } }] },
          ],
        },
      ],
    });
    expect(composeKind('session-planned', template(8, 8)).ok).toBe(true);
    const entry = composeKind('session-planned', template(10, 8));
    if (entry.ok) throw new Error('it was taken');
    expect(entry.problem.path).toContain('reps');
    expect(entry.problem.remedy).toBe('Make it repetitions whose fewest are not above their most.');
  });
});
