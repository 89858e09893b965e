import type { Verdict } from '#core/course/decide.ts';
import { changeWords, percentWords } from '#core/course/words.ts';
import type { CourseNow } from '#core/cycle/course-now.ts';
import type { Why } from '../../parts/why.ts';
import { sourceWords } from '../../views/source-words.ts';
import { say } from '../../views/say.ts';

/** The verdict in words, and what it asks of the athlete. */
export const VERDICTS: Readonly<Record<Verdict, { readonly title: string; readonly words: string }>> = {
  'on course': { title: 'On course', words: 'Hold. Nothing needs to change.' },
  behind: { title: 'Behind', words: 'A small correction brings it back; the smallest stands first.' },
  ahead: { title: 'Ahead', words: 'There is room: something can be given back.' },
  'out of reach': { title: 'Out of reach', words: 'No change inside the limits gets there in time.' },
  'too little evidence': {
    title: 'Too little evidence yet',
    words: 'No correction is proposed before there is more to go on.',
  },
};

const SOURCES = ['hall-2011', 'garthe-2011', 'helms-2014'];

/** Why the forecast says what it says. */
export function courseWhy(now: CourseNow, title: string): Why {
  const { answer, fan } = now;
  return {
    title,
    sentences: answer.why,
    formula: 'chance = paths that meet every bound on the day / all paths',
    inputs: [
      { name: 'Paths', value: String(fan.paths) },
      { name: 'Body mass now', value: say(`${now.massKg.toFixed(1)} kg`) },
      { name: 'Fat now', value: say(`${now.fatKg.toFixed(1)} kg`) },
      {
        name: now.plannedDays > 0 ? 'Plan, a day' : 'As of late, a day',
        value: `${Math.round(now.goesOn.energyKcal)} kcal, ${Math.round(now.goesOn.cardioKcal)} kcal of cardio`,
      },
    ],
    source: SOURCES.map(sourceWords).filter((words, k) => words !== SOURCES[k]),
    uncertainty:
      'Each path begins at a body the log allows and strays from the plan as the log has strayed; the band holds 9 of 10.',
  };
}

/** "25 %". */
export function chanceWords(probability: number): string {
  return percentWords(probability);
}

/** "100 kcal less food a day"; what is left out does not change. */
export function moveWords({
  energyKcal = 0,
  cardioKcal = 0,
}: {
  readonly energyKcal?: number | undefined;
  readonly cardioKcal?: number | undefined;
}): string {
  return changeWords({ energyKcal, cardioKcal });
}
