import type { KnownKind } from '../journal/kinds/registry.ts';

/** What a kind of entry is called in the Journal. Kinds without a line here are shown by their own name. */
const KIND_WORDS: { readonly [Kind in KnownKind]?: string } = {
  'athlete-described': 'Athlete',
  'note-written': 'Note',
  'entry-removed': 'Removal',
  'food-defined': 'Own food',
  'food-preferred': 'Food, how it is used',
  'container-weighed': 'Container on the scale',
  'recipe-defined': 'Recipe',
  'batch-cooked': 'Batch cooked',
  'batch-portioned': 'Batch portioned',
  'batch-reweighed': 'Batch weighed again',
  'portion-moved': 'Portion moved',
  'stock-bought': 'Bought',
  'stock-counted': 'Stock counted',
  'stock-binned': 'Thrown away',
  'week-wished': 'Wishes for the week',
  'week-adopted': 'Week adopted',
  'week-kept': 'Week left as it stands',
  'pack-known': 'Pack size',
  'target-set': 'Targets',
  'day-shaped': 'Shape of the day',
  'plan-wished': 'Wishes for the day',
  'plan-adopted': 'Plan adopted',
  'meal-eaten': 'Meal eaten',
  'meal-skipped': 'Meal skipped',
  'water-drunk': 'Drink',
  'body-weighed': 'Weigh-in',
  'folds-measured': 'Skinfolds',
  'girths-measured': 'Tape',
  'body-fat-measured': 'Body fat measured',
  'photo-taken': 'Photograph',
  'intake-totalled': "Day's intake as a total",
  'day-closed': 'Day closed',
  'cycle-noted': 'Cycle',
  'show-set': 'Show',
  'preparation-begun': 'Preparation begun',
  'course-adopted': 'Course adopted',
  'stretch-planned': 'Stretch planned',
  'correction-accepted': 'Correction accepted',
  'check-in-closed': 'Check-in',
  'event-dated': 'Date',
  'rehearsal-judged': 'Rehearsal judged',
  'show-day-timed': 'Times of the show day',
  'stage-moved': 'Stage moved',
  'show-task-done': 'Show day, done',
  'thing-packed': 'Show bag',
  'way-back-adopted': 'Way back adopted',
  'copy-lent': 'Copy lent',
};

/** "Meal eaten" of "meal-eaten"; a kind from a newer version reads as its name with spaces. */
export function kindWords(kind: string): string {
  const known: { readonly [kind: string]: string | undefined } = KIND_WORDS;
  const words = known[kind];
  if (words !== undefined) return words;
  const spaced = kind.replaceAll('-', ' ');
  return spaced.charAt(0).toUpperCase() + spaced.slice(1);
}
