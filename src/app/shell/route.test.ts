import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pathTo, readRoute } from './route.ts';

describe('[LOOK-11] addresses', () => {
  it('[LOOK-11] name a place, what is behind it, and a query', () => {
    const route = readRoute('#/kitchen/batch/new?from=stock&n=2');
    expect(route.place).toBe('kitchen');
    expect(route.rest).toEqual(['batch', 'new']);
    expect([...route.query]).toEqual([
      ['from', 'stock'],
      ['n', '2'],
    ]);
  });

  it.each(['', '#', '#/'])('[LOOK-11] "%s" is the front place', (hash) => {
    expect(readRoute(hash)).toEqual({ place: '', rest: [], query: new Map() });
  });

  it('[LOOK-11] a stray percent sign is taken as it stands', () => {
    expect(readRoute('#/kitchen/100%').rest).toEqual(['100%']);
  });

  it('[LOOK-11] any name comes back as it went in', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ minLength: 1 }), { minLength: 1, maxLength: 4 }), (steps) => {
        const { place, rest } = readRoute(pathTo(...steps));
        expect([place, ...rest]).toEqual(steps);
      }),
      { seed: 20270301 },
    );
  });
});
