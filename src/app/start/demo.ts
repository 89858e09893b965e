import { demoJournal } from '#demo/journal.ts';
import { storyMs } from '#demo/scribe.ts';
import { story } from '#demo/story.ts';
import type { Demo } from '../state/journals.ts';
import { momentOf, offsetMinutesAt, zoneName } from '../state/moments.ts';

/** One and the same invented athlete on every device. */
const SEED = 1;

/** The demonstration on this device's clock: its local times are the story's. */
export function openDemo(): Demo {
  const offsetMinutes = offsetMinutesAt(momentOf(story.today, 12 * 60));
  const at = { offsetMinutes, zone: zoneName() };
  return { entries: demoJournal(SEED, at), nowMs: storyMs(story.today, story.opensAt, at) };
}
