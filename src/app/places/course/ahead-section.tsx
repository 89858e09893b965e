import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { CourseAsk } from '#core/cycle/course-ask.ts';
import type { CourseNow } from '#core/cycle/course-now.ts';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Section } from '../../parts/section.tsx';
import { changeTried, tried } from '../../views/what-if-view.ts';
import { FanChart, QUANTITY_NAMES } from './fan-chart.tsx';
import type { FanQuantity } from './fan-series.ts';
import { WhatIf } from './what-if.tsx';

const chosen = signal<FanQuantity | undefined>(undefined);
const QUANTITIES: readonly FanQuantity[] = ['bodyFatPercent', 'massKg', 'fatKg', 'leanKg'];

/** The fan to the show, and food and cardio to try on it. */
export function AheadSection({
  ask,
  now,
}: {
  readonly ask: CourseAsk;
  readonly now: CourseNow;
}): JSX.Element {
  const quantity = chosen.value ?? (ask.target.bodyFatPercent ? 'bodyFatPercent' : 'massKg');
  const state = tried.value;
  const attempt =
    changeTried.value && state.status === 'answered' && state.outcome.ok ? state.outcome.value : undefined;
  return (
    <Section title="The way there" detail="solid was, dashed is the plan">
      <div class="stack">
        <FanChart ask={ask} now={now} quantity={quantity} other={attempt?.fan} />
        <WhatIf now={now} attempt={attempt} />
        <ChoiceField
          label="Show"
          layout="row"
          value={quantity}
          options={QUANTITIES.map((value) => ({ value, label: QUANTITY_NAMES[value] }))}
          onValue={(value) => (chosen.value = value)}
        />
      </div>
    </Section>
  );
}
