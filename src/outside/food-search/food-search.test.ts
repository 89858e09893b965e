import { describe, expect, it } from 'vitest';
import { createLedger } from '#core/journal/ledger.ts';
import { createCatalogue } from '#core/kitchen/catalogue.ts';
import type { Standing } from '#core/kitchen/picking-order.ts';
import { createFoodSearch } from './food-search.ts';

const search = createFoodSearch(createCatalogue(createLedger()).foods());
const names = (typed: string, standings: ReadonlyMap<string, Standing> = new Map()) =>
  search.find(typed, standings, 6).map((food) => food.name);

describe('foods found by typing', () => {
  it('[BAT-06] finds words in any order, the beginning of each is enough', () => {
    expect(names('ground beef 90 raw')[0]).toBe('minced beef 90/10, raw');
    expect(names('raw 90/10 beef')[0]).toBe('minced beef 90/10, raw');
    expect(names('gre yog fat free')[0]).toBe('Greek yoghurt, plain, fat free');
    expect(names('breast chick roas')[0]).toBe('chicken breast, skinless, roasted');
  });

  it('[BAT-06] forgives small slips, also when the word is still being typed', () => {
    expect(names('chiken brest')[0]).toContain('chicken breast');
    expect(names('brocoli')[0]).toContain('broccoli');
    expect(names('swet potato')[0]).toContain('sweet potato');
    expect(names('courgete')[0]).toContain('courgette');
    expect(names('salmn')[0]).toContain('salmon');
  });

  it('[BAT-06] knows the other word: oatmeal, zucchini, shrimp, ground turkey, plurals and accents', () => {
    expect(names('oatmeal')[0]).toContain('oats');
    expect(names('zucchini')[0]).toContain('courgette');
    expect(names('shrimps')[0]).toContain('prawns');
    expect(names('93/7 ground turkey')[0]).toBe('minced turkey 93/7, raw');
    expect(names('tomatoes')[0]).toBe('tomato, raw');
    expect(names('Sautéed oniön')[0]).toBe('onion, sauteed in fat');
    expect(names('cream of rice')).toContain('rice cereal, ground, dry');
  });

  it('[BAT-06] a slip is not forgiven where it would be another food, nor are strangers offered', () => {
    expect(names('egg white').every((name) => name.startsWith('egg white'))).toBe(true);
    expect(names('motor oil')).toEqual([]);
  });

  it('[BAT-07] what is in stock and favourites come first', () => {
    const standings = new Map<string, Standing>([
      ['usda-sr28:20053', { tier: 1, times: 3 }],
      ['usda-sr28:20036', { tier: 0, times: 0 }],
      ['usda-sr28:01123', { tier: 2, times: 9 }],
    ]);
    expect(names('rice', standings).slice(0, 2)).toEqual([
      'brown rice, long grain, dry',
      'white rice, short grain, cooked',
    ]);
    expect(names('', standings).slice(0, 4)).toEqual([
      'brown rice, long grain, dry',
      'white rice, short grain, cooked',
      'egg, whole, raw',
      'almond butter, unsalted',
    ]);
  });

  it('[BAT-06] every bundled food is among the first for its own name', () => {
    const lost = createCatalogue(createLedger())
      .foods()
      .filter((food) => !names(food.name).includes(food.name));
    expect(lost.map((food) => food.name)).toEqual([]);
  });
});

describe('letters the wrong way round', () => {
  it('[BAT-07] two neighbouring letters swapped still find the food', () => {
    const search = createFoodSearch(createCatalogue(createLedger()).foods());
    expect(search.find('raw onoin', new Map())[0]?.name).toBe('onion, raw');
    expect(search.find('chikcen breast', new Map())[0]?.name).toContain('chicken breast');
  });
});
