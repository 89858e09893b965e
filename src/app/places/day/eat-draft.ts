import * as v from 'valibot';
import type { SheetMeal } from '#core/cycle/day-sheet.ts';
import { plateItem, type PlateItem } from '#core/journal/kinds/plate-item.ts';
import type { Problem } from '#core/problems/problem.ts';

/** While it is being typed a count of slices may be nothing yet. */
const draftItem = v.union([
  plateItem,
  v.strictObject({ source: v.literal('slices'), recipe: v.string(), slices: v.number() }),
]);

/** A meal as it is being typed: items with or without grams yet. */
export const eatDraft = v.strictObject({
  items: v.array(v.strictObject({ item: draftItem, grams: v.optional(v.number()) })),
  at: v.optional(v.number()),
  place: v.string(),
  guessName: v.string(),
  guessKcal: v.optional(v.number()),
  guessProteinG: v.optional(v.number()),
  guessCarbohydrateG: v.optional(v.number()),
  guessFatG: v.optional(v.number()),
  guessSpread: v.picklist(['15', '30', '50']),
});
export type EatDraft = v.InferOutput<typeof eatDraft>;

/** Starts from the planned meal where there is one: what was eaten differently is then changed. */
export function eatDraftOf(meal: SheetMeal | undefined): EatDraft {
  return {
    items: (meal?.planned.items ?? []).map((item) => ({
      item,
      ...(item.grams !== undefined && { grams: item.grams }),
    })),
    place: '',
    guessName: '',
    guessSpread: '30',
  };
}

/** The smallest part of a slice that the journal keeps. */
const LEAST_SLICES = 0.05;

export type MealReading =
  | { readonly ok: true; readonly items: PlateItem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The items with the grams typed for them, and the guess that was typed and not yet put on the plate. */
export function readEaten(typed: EatDraft): MealReading {
  if (!hasGuess(typed)) return readPlate(typed);
  const guess = readGuess(typed);
  const plate: MealReading = typed.items.length === 0 ? { ok: true, items: [] } : readPlate(typed);
  if (guess.ok && plate.ok) return { ok: true, items: [...plate.items, ...guess.items] };
  return { ok: false, problems: [plate, guess].flatMap((part) => (part.ok ? [] : part.problems)) };
}

function hasGuess({ guessName, guessKcal, guessProteinG, guessCarbohydrateG, guessFatG }: EatDraft): boolean {
  const figures = [guessKcal, guessProteinG, guessCarbohydrateG, guessFatG];
  return guessName.trim() !== '' || figures.some((figure) => figure !== undefined);
}

/** A meal needs at least one item, and every weighed one its grams. */
function readPlate(typed: EatDraft): MealReading {
  if (typed.items.length === 0) {
    return {
      ok: false,
      problems: [
        fault(
          'items',
          'Nothing is on the plate yet.',
          'Choose a food, or enter a guess for a meal eaten out.',
        ),
      ],
    };
  }
  const problems: Problem[] = [];
  const items = typed.items.map(({ item, grams }, place): PlateItem => {
    if (item.source === 'guess') return item;
    if (item.source === 'slices') {
      if (item.slices >= LEAST_SLICES) return item;
      problems.push(
        fault(`items.${place}`, 'One recipe has no slices.', 'Say how many, or take it off the plate.'),
      );
      return item;
    }
    if (grams === undefined || grams <= 0) {
      problems.push(fault(`items.${place}`, 'One food has no grams.', 'Weigh it, or take it off the plate.'));
      return item;
    }
    return { ...item, grams };
  });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, items };
}

/** A restaurant guess: macros by eye and how far off they may be. */
export function readGuess(typed: EatDraft): MealReading {
  const { guessName, guessKcal, guessProteinG, guessCarbohydrateG, guessFatG, guessSpread } = typed;
  const fromMacros = 4 * (guessProteinG ?? 0) + 4 * (guessCarbohydrateG ?? 0) + 9 * (guessFatG ?? 0);
  const energyKcal = guessKcal ?? fromMacros;
  if (energyKcal <= 0) {
    return {
      ok: false,
      problems: [
        fault(
          'guessKcal',
          'The guess has no figures.',
          'Enter its energy, or protein, carbohydrate and fat.',
        ),
      ],
    };
  }
  const known = guessProteinG !== undefined || guessCarbohydrateG !== undefined || guessFatG !== undefined;
  if (!known) {
    const words = 'Energy alone cannot be planned around.';
    return {
      ok: false,
      problems: [
        fault('guessProteinG', words, 'Guess protein, carbohydrate and fat as well; 0 is a figure too.'),
      ],
    };
  }
  return {
    ok: true,
    items: [
      {
        source: 'guess',
        name: guessName.trim() === '' ? 'Meal eaten out' : guessName.trim(),
        nutrients: {
          energyKcal,
          proteinG: guessProteinG ?? 0,
          carbohydrateG: guessCarbohydrateG ?? 0,
          fatG: guessFatG ?? 0,
        },
        spreadPercent: Number(guessSpread),
      },
    ],
  };
}

function fault(path: string, message: string, remedy: string): Problem {
  return { code: `day/${path.replace(/\W+/g, '-')}`, path, message, remedy };
}
