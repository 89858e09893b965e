import type { JSX } from 'preact';
import type { LastWeekNow } from '#core/cycle/last-week-now.ts';
import { publishedLimits } from '#core/limits/published-limits.ts';
import { Facts } from '../../parts/facts.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Section } from '../../parts/section.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import type { LastWeekDraft } from './last-week-draft.ts';
import { lastWeekWish } from './last-week-state.ts';

/** How much is loaded, and what the days are usually like. */
export function LoadFields({ now }: { readonly now: LastWeekNow }): JSX.Element {
  const form = lastWeekWish();
  const change = (part: Partial<LastWeekDraft>): void => {
    form.value = { ...form.value, ...part };
  };
  return (
    <>
      <Section title="The load">
        <div class="stack">
          <StepperField
            label="Loading days"
            value={now.loadDays}
            step={1}
            min={0}
            max={publishedLimits.load.maxDays}
            onValue={(loadDays) => change({ loadDays })}
          />
          {now.loadDays > 0 && (
            <StepperField
              label="Carbohydrate a loading day"
              unit="g per kg"
              decimals={1}
              value={now.loadGPerKg}
              step={0.5}
              min={1}
              max={publishedLimits.load.maxGPerKg}
              onValue={(loadGPerKg) => change({ loadGPerKg })}
            />
          )}
        </div>
      </Section>
      <Section title="A usual day" detail={usualDetail(now)}>
        <div class="stack">
          <Facts items={usualFacts(now)} />
          {now.usual.waterMl === undefined && (
            <NumberField
              label="Water on a usual day"
              unit="mL"
              min={500}
              max={10_000}
              value={form.value.usualWaterMl}
              onValue={(usualWaterMl) => change({ usualWaterMl })}
              hint="drinks are not logged often enough to tell"
              optional
            />
          )}
          {now.usual.sodiumMg === undefined && (
            <NumberField
              label="Sodium on a usual day"
              unit="mg"
              min={500}
              max={20_000}
              value={form.value.usualSodiumMg}
              onValue={(usualSodiumMg) => change({ usualSodiumMg })}
              hint="the foods logged do not all tell theirs"
              optional
            />
          )}
          <Note>Water and salt stay as they are on such a day.</Note>
        </div>
      </Section>
    </>
  );
}

function usualDetail({ usual }: LastWeekNow): string {
  return usual.loggedDays === 1 ? 'one logged day' : `mean of ${usual.loggedDays} logged days`;
}

function usualFacts({ usual }: LastWeekNow): { name: string; value: string }[] {
  const { carbohydrateG, proteinG, fatG, fibreG, waterMl, sodiumMg } = usual;
  return [
    { name: 'Carbohydrate', value: `${carbohydrateG} g` },
    { name: 'Protein', value: `${proteinG} g` },
    { name: 'Fat', value: `${fatG} g` },
    ...(fibreG === undefined ? [] : [{ name: 'Fibre', value: `${fibreG} g` }]),
    ...(waterMl === undefined ? [] : [{ name: 'Drunk', value: `${waterMl} mL` }]),
    ...(sodiumMg === undefined ? [] : [{ name: 'Sodium', value: `${sodiumMg} mg` }]),
  ];
}
