import type { JSX } from 'preact';
import type { LastWeekDay } from '#core/course/last-week.ts';
import type { LastWeekNow } from '#core/cycle/last-week-now.ts';
import { dateWords, dayAndMonth } from '#core/words/dates.ts';
import { Figure } from '../../parts/figure.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Section } from '../../parts/section.tsx';
import { Tag } from '../../parts/tag.tsx';
import type { Why } from '../../parts/why.ts';
import { sourceWords } from '../../views/source-words.ts';

const ROLES = { taper: 'taper', load: 'loading', show: 'show day' } as const;

/** Each day: what is eaten, drunk and trained. */
export function LastWeekDays({ now }: { readonly now: LastWeekNow }): JSX.Element {
  const { adopted } = now;
  return (
    <Section
      title="Day by day"
      detail={
        adopted
          ? `adopted, loading from ${dayAndMonth(adopted.from)}; at the right, carbohydrate`
          : 'at the right, carbohydrate'
      }
      action={adopted && <Tag kind="next">adopted</Tag>}
    >
      <List label="Day by day">
        {now.plan.days.map((day) => (
          <ListRow
            key={day.date}
            title={`${dateWords(day.date)}, ${ROLES[day.role]}`}
            detail={dayWords(day)}
            figure={
              <Figure
                value={day.carbohydrateG}
                unit="g"
                size="line"
                label={`Carbohydrate on ${dateWords(day.date)}`}
                labelHidden
                why={() => carbohydrateWhy(day, now)}
              />
            }
          />
        ))}
      </List>
    </Section>
  );
}

function dayWords({ proteinG, fatG, fibreMaxG, waterMl, sodiumMg, training }: LastWeekDay): string {
  const drinks =
    waterMl === undefined && sodiumMg === undefined
      ? 'water and salt as ever'
      : [
          ...(waterMl === undefined ? ['water as ever'] : [`water ${(waterMl / 1000).toFixed(1)} L`]),
          ...(sodiumMg === undefined ? ['salt as ever'] : [`sodium ${sodiumMg} mg`]),
        ].join(', ');
  const fibre = fibreMaxG === undefined ? '' : `, fibre at most ${fibreMaxG} g`;
  return `${proteinG} g protein, ${fatG} g fat${fibre}; ${drinks}. ${training}`;
}

function carbohydrateWhy(day: LastWeekDay, { plan, loadGPerKg, usual }: LastWeekNow): Why {
  return {
    title: `Carbohydrate on ${dateWords(day.date)}`,
    sentences: day.role === 'taper' ? ['As on a usual day: the taper changes training, not food.'] : plan.why,
    ...(day.role !== 'taper' && {
      formula: 'g per kg asked for × body mass, held between the usual day and the limit',
    }),
    inputs: [
      { name: 'Asked for', value: `${loadGPerKg} g per kg` },
      { name: 'A usual day', value: `${usual.carbohydrateG} g` },
      { name: 'Energy of the day', value: `${day.energyKcal} kcal` },
    ],
    source: plan.sources.map(sourceWords),
  };
}
