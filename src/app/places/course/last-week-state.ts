import { computed } from '@preact/signals';
import { lastWeekNow, type LastWeekNow } from '#core/cycle/last-week-now.ts';
import { answered, type Outcome, refused } from '#core/problems/problem.ts';
import { draft } from '../../state/drafts.ts';
import { ledger } from '../../state/open-journal.ts';
import { keptAsked } from '../../views/asked.ts';
import { course, courseQuestion } from '../../views/course-view.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import { askCourse } from '../../worker/course-client.ts';
import { lastWeekDraft } from './last-week-draft.ts';

export const LAST_WEEK_DRAFT = 'course/last-week';

/** What is wished of the load, as typed. */
export function lastWeekWish() {
  return draft(LAST_WEEK_DRAFT, lastWeekDraft, {});
}

/** The last week as it stands, or that the course it needs is still being worked out. */
export const lastWeek = computed((): 'working' | Outcome<LastWeekNow> => {
  const ask = courseQuestion.value;
  if (!ask.ok) return ask;
  const state = course.value;
  if (state.status === 'working') return 'working';
  if (!state.outcome.ok) return state.outcome;
  return lastWeekNow(ledger.value, ask.value, state.outcome.value, lastWeekWish().value, kitchen.peek().read);
});

const jumpQuestion = computed(() => {
  const ask = courseQuestion.value;
  if (!ask.ok) return ask;
  const week = lastWeek.value;
  if (week === 'working' || !week.ok || week.value.load === undefined)
    return refused('course/no-load', 'loadDays', 'No load is planned.', 'The scale will not tell it.');
  return answered({ ask: ask.value, stretch: week.value.load });
});

/** What the load does to the scale, as the worker last said. */
export const loadJump = keptAsked(jumpQuestion, (asks) => askCourse('jump', asks));
