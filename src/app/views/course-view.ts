import { computed } from '@preact/signals';
import { courseAsk } from '#core/cycle/course-ask.ts';
import { today } from '../state/clock.ts';
import { ledger } from '../state/open-journal.ts';
import { askCourse } from '../worker/course-client.ts';
import { keptAsked } from './asked.ts';
import { kitchen } from './kitchen-view.ts';

/** What the course is asked: the next show, the plan, the log; or what is lacking. */
export const courseQuestion = computed(() => courseAsk(ledger.value, today.value, kitchen.peek().read));

/** Where the course leads, as the worker last said. */
export const course = keptAsked(courseQuestion, (ask) => askCourse('course', ask));
