import { describe, expect, it } from 'vitest';
import { createLedger } from '#core/journal/ledger.ts';
import { kitchenEntries } from '../../../test/journal/kitchen-journal.ts';
import { recipeExport, recipeImport } from './recipe-format.ts';

const entriesOfBoth = kitchenEntries([
  [
    0,
    'food-defined',
    {
      food: 'powder',
      name: 'Protein powder',
      state: 'dry',
      per100g: { energyKcal: 400, proteinG: 80, fatG: 5, carbohydrateG: 10 },
      basis: 'label',
    },
  ],
  [
    1,
    'recipe-defined',
    {
      recipe: 'tray',
      name: 'Oat tray',
      ingredients: [
        { food: 'usda-sr28:08120', rawG: 300 },
        { food: 'powder', rawG: 120 },
      ],
      steps: ['Bake.'],
      yields: { slices: 10 },
    },
  ],
]);
const [own, recipes] = [entriesOfBoth.slice(0, 1), entriesOfBoth.slice(1)];
const written = recipeExport.write(createLedger([...own, ...recipes]), {});
const day = '2027-03-07';

describe('recipes as a file of the journal', () => {
  it('[BAT-55] out and in again is the same recipe, on the day it came in', () => {
    const { entries, problems } = recipeImport.read(written, { day, into: createLedger(own) });
    expect(problems).toEqual([]);
    expect(entries.map((entry) => [entry.kind, entry.day, entry.data])).toEqual([
      ['recipe-defined', day, recipes[0]?.data],
    ]);
    expect(recipeImport.read(written, { day, into: createLedger(own) }).entries).toEqual(entries);
  });

  it('[BAT-56] where the food is not known the recipe is refused by the words of its ingredient', () => {
    const { entries, problems } = recipeImport.read(written, { day });
    expect(entries).toEqual([]);
    expect(problems.map((problem) => problem.message)).toEqual([
      '"120 g Protein powder" in "Oat tray" is no food of the table and none of the own foods.',
    ]);
  });

  it('[BAT-55] knows its files by name or by what they say', () => {
    expect(recipeImport.recognises('broth.jsonld', '')).toBe(true);
    expect(recipeImport.recognises('broth.json', written)).toBe(true);
    expect(recipeImport.recognises('bundle.json', '{"resourceType":"Bundle"}')).toBe(false);
  });
});
