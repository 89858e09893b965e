import { computed, signal } from '@preact/signals';
import type { Change } from '#core/course/change.ts';
import { answered, refused } from '#core/problems/problem.ts';
import { askCourse } from '../worker/course-client.ts';
import { keptAsked } from './asked.ts';
import { courseQuestion } from './course-view.ts';

/** The change of food and cardio that is being tried out, kcal a day. */
export const triedChange = signal<Change>({});

export const changeTried = computed(() => {
  const { energyKcal = 0, cardioKcal = 0 } = triedChange.value;
  return energyKcal !== 0 || cardioKcal !== 0;
});

const question = computed(() => {
  const ask = courseQuestion.value;
  if (!ask.ok) return ask;
  if (!changeTried.value)
    return refused('course/nothing-tried', '', 'No change is tried.', 'Change food or cardio.');
  return answered({ ask: ask.value, change: triedChange.value });
});

/** The course with the change in it, following the finger. */
export const tried = keptAsked(question, (asks) => askCourse('whatIf', asks));
