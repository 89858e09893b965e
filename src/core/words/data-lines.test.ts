import { describe, expect, it } from 'vitest';
import { dataLines } from './data-lines.ts';
import { kindWords } from './kind-words.ts';

const nameOf = (id: string) => (id === 'usda-sr28:09040' ? 'Banana, raw' : undefined);

describe('an entry in words', () => {
  it('[JRN-40] every field is shown with its unit, names instead of ids', () => {
    expect(dataLines({ massKg: 81.4, clothed: false }, nameOf)).toEqual([
      { field: 'mass', value: '81.4 kg' },
      { field: 'clothed', value: 'no' },
    ]);
    expect(dataLines({ items: [{ source: 'food', food: 'usda-sr28:09040', grams: 120 }] }, nameOf)).toEqual([
      { field: 'items 1', value: 'source food, food Banana, raw, grams 120' },
    ]);
    expect(dataLines({ portionsG: [174, 174], proteinG: 200 }, nameOf)).toEqual([
      { field: 'portions', value: '174, 174 g' },
      { field: 'protein', value: '200 g' },
    ]);
  });

  it('[JRN-40] a kind from a newer version is shown by its name', () => {
    expect(kindWords('meal-eaten')).toBe('Meal eaten');
    expect(kindWords('sauna-refused')).toBe('Sauna refused');
  });
});
