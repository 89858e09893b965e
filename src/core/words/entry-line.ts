import type { Entry } from '../journal/entry.ts';
import type { PlateItem } from '../journal/kinds/plate-item.ts';
import type { DataOf, KnownKind } from '../journal/kinds/registry.ts';
import type { Fact } from '../journal/ledger.ts';
import { roundTo } from '../units/rounding.ts';
import { dataLines } from './data-lines.ts';

export type NameOf = (id: string) => string | undefined;

type Writers = { readonly [Kind in KnownKind]?: (data: DataOf<Kind>, nameOf: NameOf) => string };

/** Kinds met most often, said as a person would; all others are said field by field. */
const WRITERS: Writers = {
  'athlete-described': (d) => `${d.name ?? 'No name'}, born ${d.birthYear}, ${d.heightCm} cm`,
  'note-written': (d) => d.text,
  'food-defined': (d) =>
    `${d.name}: ${d.per100g.energyKcal} kcal, ${d.per100g.proteinG} P, ${d.per100g.carbohydrateG} C, ${d.per100g.fatG} F per 100 g`,
  'container-weighed': (d) => `${d.name}, ${d.emptyG} g empty`,
  'recipe-defined': (d) =>
    `${d.name}: ${d.ingredients.length} ingredients${d.yields.slices === undefined ? '' : `, ${d.yields.slices} slices`}${d.yields.cookedG === undefined ? '' : `, ${d.yields.cookedG} g cooked`}`,
  'batch-cooked': (d, nameOf) =>
    `${d.name}: ${d.ingredients.map((part) => grams(part.rawG, named(part.food, nameOf))).join(', ')} raw gave ${roundTo(d.cookedGrossG - d.containerG, 0)} g`,
  'batch-portioned': (d, nameOf) =>
    `${named(d.batch, nameOf)}: ${d.portionsG.map((g) => `${g} g`).join(', ')} into the ${d.place}`,
  'stock-bought': (d, nameOf) => `${grams(d.grams, named(d.food, nameOf))} for the ${d.place}`,
  'stock-counted': (d, nameOf) =>
    d.grams === 0
      ? `${named(d.food, nameOf)} ran out`
      : `${grams(d.grams, named(d.food, nameOf))} in the ${d.place}`,
  'week-adopted': (d, nameOf) =>
    `${d.days.length} days from ${d.days[0]?.date ?? ''}: ${d.pans.map((pan) => `${named(pan.recipe, nameOf)} on ${pan.date}`).join(', ')}`,
  'week-kept': (d) => d.because.join(' '),
  'pack-known': (d, nameOf) => `${named(d.food, nameOf)} in packs of ${roundTo(d.packG, 1)} g`,
  'target-set': (d) =>
    `${d.proteinG} P, ${d.carbohydrateG} C, ${d.fatG} F, ${d.dayKind === 'every' ? 'every day' : `${d.dayKind} days`} from ${d.from}`,
  'day-shaped': (d) =>
    `${d.wake} to ${d.sleep}${d.training ? `, training ${d.training.start} for ${d.training.minutes} min` : ''}`,
  'plan-adopted': (d) =>
    `${d.cause}: ${d.meals.length} meals at ${d.meals.map((meal) => meal.at).join(', ')}`,
  'meal-eaten': (d, nameOf) => d.items.map((item) => itemLine(item, nameOf)).join(', '),
  'meal-skipped': (d) => d.reason ?? 'no reason given',
  'water-drunk': (d) => `${d.millilitres} mL ${d.drink}`,
  'body-weighed': (d) => `${d.massKg} kg${d.circumstances ? `, ${d.circumstances.join(', ')}` : ''}`,
  'body-fat-measured': (d) => `${d.percent} % by ${d.method}`,
  'show-set': (d) => `${d.name}, ${d.date}`,
  'correction-accepted': (d) => d.why.join(' '),
  'check-in-closed': (d) => `week of ${d.week}: ${d.decision}`,
  'event-dated': (d) => `${d.title}, ${d.date}${d.at === undefined ? '' : ` at ${d.at}`}`,
  'rehearsal-judged': (d) => `next time ${d.again}${d.lessons === undefined ? '' : `: ${d.lessons}`}`,
  'show-day-timed': (d) => `wake ${d.wake}, stage ${d.stage}`,
  'stage-moved': (d) => `to ${d.stage}, said at ${d.now}`,
  'show-task-done': (d) => d.task,
  'thing-packed': (d) => `${d.thing}: ${d.packed ? 'in the bag' : 'not in the bag'}`,
  'copy-lent': (d) =>
    `${d.to} reads ${d.parts.join(', ')} until ${d.until}${d.takenBack === true ? ', taken back' : ''}`,
  'way-back-adopted': (d) =>
    `${d.pace}: ${d.weeks[0]?.energyKcal ?? '?'} to ${d.weeks.at(-1)?.energyKcal ?? '?'} kcal a day`,
};

/** What a fact says, in one line. */
export function factLine(fact: Fact, nameOf: NameOf): string {
  const writer: ((data: never, nameOf: NameOf) => string) | undefined = WRITERS[fact.kind];
  // The writer stands under the fact's own kind, so its data is of that kind.
  return writer ? writer(fact.data as never, nameOf) : plainLine(fact.entry, nameOf);
}

/** Any entry, known or not, field by field in one line. */
export function plainLine(entry: Entry, nameOf: NameOf): string {
  return dataLines(entry.data, nameOf)
    .map((line) => `${line.field} ${line.value}`)
    .join(', ');
}

function itemLine(item: PlateItem, nameOf: NameOf): string {
  switch (item.source) {
    case 'food':
      return grams(item.grams, named(item.food, nameOf));
    case 'batch':
      return grams(item.grams, named(item.batch, nameOf));
    case 'recipe':
      return grams(item.grams, named(item.recipe, nameOf));
    case 'slices':
      return `${roundTo(item.slices, 2)} ${item.slices === 1 ? 'slice' : 'slices'} ${named(item.recipe, nameOf)}`;
    case 'guess':
      return `${item.name}, guessed at ${Math.round(item.nutrients.energyKcal)} kcal ± ${item.spreadPercent} %`;
  }
}

function grams(amount: number, name: string): string {
  return `${roundTo(amount, 1)} g ${name}`;
}

function named(id: string, nameOf: NameOf): string {
  return nameOf(id) ?? id;
}
