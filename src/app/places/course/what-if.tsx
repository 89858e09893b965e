import type { JSX } from 'preact';
import { changeWords } from '#core/course/words.ts';
import type { CourseNow, TriedChange } from '#core/cycle/course-now.ts';
import { capital } from '#core/units/capital.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Figure } from '../../parts/figure.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { say } from '../../views/say.ts';
import { sourceWords } from '../../views/source-words.ts';
import { changeTried, triedChange } from '../../views/what-if-view.ts';
import { openCorrection } from './correction-draft.ts';
import { chanceWords } from './course-words.ts';
import './what-if.css';

const STEP_KCAL = 25;
const MOST_KCAL = 600;

interface WhatIfProps {
  readonly now: CourseNow;
  readonly attempt: TriedChange | undefined;
}

/** Food and cardio a day, more or less; the chart above follows. */
export function WhatIf({ now, attempt }: WhatIfProps): JSX.Element {
  const { energyKcal = 0, cardioKcal = 0 } = triedChange.value;
  const leastCardio = -Math.floor(now.goesOn.cardioKcal / STEP_KCAL) * STEP_KCAL;
  return (
    <div class="what-if">
      <div class="what-if-steppers">
        <StepperField
          label="Food, change a day"
          unit="kcal"
          value={energyKcal}
          step={STEP_KCAL}
          min={-MOST_KCAL}
          max={MOST_KCAL}
          onValue={(n) => (triedChange.value = { ...triedChange.value, energyKcal: n ?? 0 })}
        />
        <StepperField
          label="Cardio, change a day"
          unit="kcal"
          value={cardioKcal}
          step={STEP_KCAL}
          min={leastCardio}
          max={MOST_KCAL}
          onValue={(n) => (triedChange.value = { ...triedChange.value, cardioKcal: n ?? 0 })}
        />
      </div>
      {changeTried.value && attempt && <Attempt now={now} attempt={attempt} />}
    </div>
  );
}

function Attempt({ now, attempt }: { readonly now: CourseNow; readonly attempt: TriedChange }): JSX.Element {
  const { fan, limit, energyKcal, cardioKcal, lossPercentPerWeek } = attempt;
  const words = changeWords(triedChange.value);
  const sentences = [
    `With ${words} the days to the show average ${Math.round(energyKcal)} kcal and ${Math.round(cardioKcal)} kcal of cardio, and ${lossPercentPerWeek.toFixed(2)} % of body mass goes a week.`,
    `The chance was ${chanceWords(now.answer.probability)}.`,
  ];
  const why = {
    title: capital(words),
    sentences,
    inputs: [{ name: 'Paths', value: String(fan.paths) }],
    uncertainty:
      'Counted over the same paths as before the change, so the difference is that of the plans alone.',
  };
  const take = (): void => {
    openCorrection({
      ...triedChange.value,
      before: now.answer.probability,
      after: fan.probability,
      why: ['Chosen by hand on the chart.', ...sentences],
    });
    go(pathTo('course', 'correct'));
  };
  return (
    <div class="stack">
      <div class="row">
        <Figure value={chanceWords(fan.probability)} label="Chance then" size="large" why={why} />
        <Figure value={Math.round(energyKcal)} unit="kcal" label="Food a day" why={why} />
        <Figure value={Math.round(cardioKcal)} unit="kcal" label="Cardio a day" why={why} />
        <Figure value={lossPercentPerWeek} unit="% a week" decimals={2} label="Loss" why={why} />
      </div>
      {limit && <Caution title="Not planned" words={say(limit.words)} source={sourceWords(limit.source)} />}
      <div class="row">
        <Button onPress={() => (triedChange.value = {})}>Back to the plan</Button>
        {!limit && <Button onPress={take}>Take this change</Button>}
      </div>
    </div>
  );
}
