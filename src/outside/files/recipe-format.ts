import type { Entry } from '#core/journal/entry.ts';
import { importedEntry } from '#core/journal/imported-entry.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { createCatalogue } from '#core/kitchen/catalogue.ts';
import { adoptRecipe } from '#core/kitchen/recipe/adopt-recipe.ts';
import { readRecipeJsonLd } from '#core/kitchen/recipe/read-recipe-json-ld.ts';
import { recipeJsonLd } from '#core/kitchen/recipe/recipe-json-ld.ts';
import type { Problem } from '#core/problems/problem.ts';
import type { JournalExport, JournalImport } from './journal-format.ts';

/** Every recipe of the journal as schema.org Recipe, one graph. */
export const recipeExport: JournalExport = {
  name: 'recipe',
  says: 'the recipes as schema.org JSON-LD',
  fileEnding: 'jsonld',
  mediaType: 'application/ld+json',
  write(ledger) {
    const catalogue = createCatalogue(ledger);
    const graph = catalogue.recipes().map((recipe) => recipeJsonLd(recipe, (food) => catalogue.food(food)));
    return `${JSON.stringify({ '@context': 'https://schema.org', '@graph': graph }, undefined, 2)}\n`;
  },
};

/** Recipes whose ingredients name foods of the table or of the journal they come into; others are asked for on the Recipes screen. */
export const recipeImport: JournalImport = {
  name: 'recipe',
  says: 'schema.org Recipe as JSON-LD',
  recognises: (fileName, text) =>
    /\.jsonld$/i.test(fileName) ||
    (text.includes('schema.org') && /"(https?:\/\/schema\.org\/)?Recipe"/.test(text)),
  read(text, { day = '', into = createLedger([]) }) {
    const entries: Entry[] = [];
    const problems: Problem[] = [];
    const found = readRecipeJsonLd(text);
    if (!found.ok) return { entries, problems: [found.problem] };
    const catalogue = createCatalogue(into);
    for (const [index, foreign] of found.value.entries()) {
      const recipe = adoptRecipe(catalogue, foreign);
      const entry = recipe.ok
        ? importedEntry({ kind: 'recipe-defined', day, data: recipe.value }, `recipe ${index + 1}`)
        : recipe;
      if (entry.ok) entries.push(entry.value);
      else problems.push(entry.problem);
    }
    return { entries: entries.sort((a, b) => (a.stamp < b.stamp ? -1 : 1)), problems };
  },
};
