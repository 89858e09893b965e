import { describe, expect, it } from 'vitest';
import { simulateDevices } from '../../../test/simulation/devices.ts';

const FIRST = 1001;
const CHUNK = 250;
const chunks = Array.from({ length: 40 }, (_, i) => FIRST + i * CHUNK);

describe('two to five devices under faults', () => {
  it.each(chunks)('[SYN-07] end with the same bytes, 250 seeds from %i on', async (first) => {
    for (let seed = first; seed < first + CHUNK; seed++) {
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
