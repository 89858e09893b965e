import { describe, expect, it } from 'vitest';
import { type DevicesRun, simulateDevices } from '../../../test/simulation/devices.ts';

const SEEDS = 200;

describe('two to five devices under faults', () => {
  it('[SYN-07] end with the same bytes, and nothing acknowledged is lost, over 200 seeds', {
    timeout: 60_000,
  }, async () => {
    const happened: Record<string, number> = {};
    for (let seed = 1; seed <= SEEDS; seed++) {
      const run = await simulateDevices(seed);
      expect({ seed, lost: run.lost, problems: run.problems, different: new Set(run.files).size }).toEqual({
        seed,
        lost: [],
        problems: [],
        different: 1,
      });
      for (const [what, count] of Object.entries(run.happened))
        happened[what] = (happened[what] ?? 0) + count;
    }
    // The simulation was not vacuous: each fault really happened, many times.
    for (const [what, count] of Object.entries(happened)) expect([what, count > SEEDS]).toEqual([what, true]);
  });

  it('[SYN-07] the same seed is the same run', async () => {
    const once: DevicesRun = await simulateDevices(7);
    const again = await simulateDevices(7);
    expect(again).toEqual(once);
  });
});
