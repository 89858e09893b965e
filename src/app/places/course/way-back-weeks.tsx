import type { JSX } from 'preact';
import type { AfterwardsNow } from '#core/cycle/afterwards-now.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { Section } from '../../parts/section.tsx';
import { Table } from '../../parts/table.tsx';
import { WhyButton } from '../../parts/why-button.tsx';
import { massUnit } from '../../views/mass-units.ts';
import { say } from '../../views/say.ts';
import { sourceWords } from '../../views/source-words.ts';

/** Week by week: what is eaten, and where the scale may stand at its end. */
export function WayBackWeeks({ now }: { readonly now: AfterwardsNow }): JSX.Element {
  const { unit, shown } = massUnit.value;
  const { plan, from, week } = now;
  return (
    <Section
      title="Week by week"
      detail={week === undefined ? undefined : `week ${week} now`}
      action={
        <WhyButton
          why={() => ({
            title: 'The way back',
            sentences: plan.why,
            formula:
              'balance in the first week, then 8 % above it; in steps: 150 kcal more each week up to that',
            inputs: [
              { name: 'Eaten before the show, a day', value: `${from.dietKcal} kcal` },
              { name: 'Keeps the balance, a day', value: `${from.balanceKcal} kcal` },
              { name: 'Body mass', value: say(`${from.massKg} kg`) },
              { name: 'Body fat', value: `${from.fatPercent} %` },
            ],
            source: plan.sources.map(sourceWords),
            uncertainty:
              'The band holds half to one and a half times the water seen in the study, and 0.25 to 0.75 % of body mass a week on top.',
          })}
        >
          Why so much?
        </WhyButton>
      }
    >
      <Table
        caption="Week by week"
        captionHidden
        columns={[
          { key: 'week', label: 'From' },
          { key: 'energy', label: 'Energy a day', unit: 'kcal', numeric: true },
          { key: 'mass', label: 'At its end', unit, numeric: true },
        ]}
        rows={plan.weeks.map((one) => ({
          week: dayAndMonth(one.from),
          energy: String(one.energyKcal),
          mass: `${shown(one.massKg.low).toFixed(1)} to ${shown(one.massKg.high).toFixed(1)}`,
        }))}
      />
    </Section>
  );
}
