import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { sources } from '#core/tables/sources.ts';

const room = fileURLToPath(new URL('.', import.meta.url));
/** Ground of the room: no equation of its own. */
const GROUND = new Set(['studied-range.ts']);
/** Parts of the dynamic model that name their source in the equation files they are made of. */
const PARTS = new Set(['simulate-adult-energy.ts']);

describe('equations', () => {
  const files = readdirSync(room).filter((file) => /^[a-z-]+\.ts$/.test(file) && !GROUND.has(file));

  it('[EST-26] each file of an equation names a key of the list of sources', () => {
    const keys = Object.keys(sources);
    const silent = files.filter(
      (file) =>
        !PARTS.has(file) && !keys.some((key) => readFileSync(`${room}/${file}`, 'utf8').includes(key)),
    );
    expect(silent).toEqual([]);
  });
});
