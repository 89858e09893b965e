import type { JSX } from 'preact';
import type { DaySheet } from '#core/cycle/day-sheet.ts';
import { sumNutrients } from '#core/kitchen/nutrients.ts';
import { Button } from '../../parts/button.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { SpiritLevel } from '../../parts/spirit-level.tsx';
import { pathTo } from '../../shell/route.ts';
import './left-today.css';
import { TargetsTooLow } from './targets-too-low.tsx';
import { leftWhy } from './whys.ts';

const MACROS = [
  { key: 'proteinG', name: 'Protein', within: 5, span: 40 },
  { key: 'carbohydrateG', name: 'Carbohydrate', within: 8, span: 60 },
  { key: 'fatG', name: 'Fat', within: 4, span: 25 },
] as const;

/** What is left to eat today, and where the day lands if the plan is eaten as it stands. */
export function LeftToday({ sheet }: { readonly sheet: DaySheet }): JSX.Element {
  return (
    <Section
      title="Left today"
      action={
        <Button kind="quiet" href={pathTo('day', 'targets')}>
          Targets
        </Button>
      }
    >
      {sheet.left ? <Left sheet={sheet} /> : <Note>No targets are set for this day.</Note>}
      {sheet.targets?.data.basis === 'entered' && <TargetsTooLow brief targets={sheet.targets.data} />}
    </Section>
  );
}

/** What labels and guesses leave open of what was eaten, one standard deviation; 0 where it rounds to nothing. */
function uncertain(sheet: DaySheet, key: 'proteinG' | 'carbohydrateG' | 'fatG'): number {
  return Math.round(sheet.total.spread[key] ?? 0);
}

function Left({ sheet }: { readonly sheet: DaySheet }): JSX.Element {
  const left = sheet.left;
  if (!left) return <Note>No targets are set for this day.</Note>;
  const asks = alsoAsked(sheet);
  const ahead = sheet.meals.filter((meal) => meal.eaten === undefined && meal.skipped === undefined);
  const planned = sumNutrients(
    ahead.flatMap((meal) => meal.items.flatMap((item) => (item.amount ? [item.amount] : []))),
  );
  return (
    <div class="left-today">
      {MACROS.map(({ key, name, within, span }) => (
        <div key={key} class="left-today-row">
          <Figure
            value={left[key]}
            unit="g"
            label={name}
            {...(uncertain(sheet, key) > 0 && { plusMinus: uncertain(sheet, key) })}
            why={() => leftWhy(sheet, key, name)}
          />
          {ahead.length > 0 && (
            <SpiritLevel
              label={`${name}, plan eaten`}
              off={planned.nutrients[key] - left[key]}
              unit="g"
              within={within}
              span={span}
            />
          )}
        </div>
      ))}
      {asks !== undefined && <Note>{asks}</Note>}
    </div>
  );
}

/** What a day before a show asks beside its macros. */
function alsoAsked({ targets }: DaySheet): string | undefined {
  const { fibreMaxG, waterMl } = targets?.data ?? {};
  if (fibreMaxG === undefined && waterMl === undefined) return undefined;
  const fibre = fibreMaxG === undefined ? '' : `Little fibre today, at most ${fibreMaxG} g. `;
  const water = waterMl === undefined ? 'Water' : `Water ${(waterMl / 1000).toFixed(1)} L`;
  return `${fibre}${water} and salt as ever.`;
}
