import { describe, expect, it } from 'vitest';
import { simulateDevices } from '../../../test/simulation/devices.ts';

describe('two to five devices under faults', () => {
  it('[SYN-07] end with the same bytes over 10 000 seeds', async () => {
    for (let seed = 1001; seed <= 11_000; seed++) {
      const { lost, problems, files } = await simulateDevices(seed);
      expect({ seed, lost, problems, different: new Set(files).size }).toEqual({
        seed,
        lost: [],
        problems: [],
        different: 1,
      });
    }
  });
});
