import type { Entry } from '#core/journal/entry.ts';
import { bodyPath } from './body-path.ts';
import { writeMorning, writePlan, writeRicePot, writeUntilNoon } from './late-day.ts';
import { writePantry } from './pantry.ts';
import { writeRecipes } from './recipes.ts';
import { createScribe } from './scribe.ts';
import { writeSeason } from './season.ts';
import { story, utc, type StoryClock } from './story.ts';
import { writeHall } from './training.ts';
import { writePacks, writeWeekAhead } from './week-ahead.ts';
import { writeWeeks } from './weeks.ts';

/** The invented athlete's whole journal: the same bytes for the same seed and clock. */
export function demoJournal(seed: number, at: StoryClock = utc): readonly Entry[] {
  const scribe = createScribe(seed, at);
  const path = bodyPath(seed);
  const last = path.at(-1);
  if (!last) throw new RangeError('the story has no days');
  writeSeason(scribe);
  writeHall(scribe);
  writePantry(scribe, story.begins);
  writeRecipes(scribe, story.begins);
  writePacks(scribe, story.begins);
  writeWeeks(scribe, path, seed);
  writeRicePot(scribe);
  writeMorning(scribe, last.scaleKg);
  writePlan(scribe, last.scaleKg, at);
  writeWeekAhead(scribe);
  writeUntilNoon(scribe);
  return scribe.entries;
}
