import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { BodyNow } from '#core/cycle/body-now.ts';
import { parseDate } from '#core/units/civil-date.ts';
import { TimeChart } from '../../charts/time-chart.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Section } from '../../parts/section.tsx';
import { weighIns } from '../../views/body-view.ts';
import { massUnit } from '../../views/mass-units.ts';
import { NINETY } from './body-whys.ts';

type Span = 'six weeks' | 'everything';
const SIX_WEEKS = 42;
const span = signal<Span>('six weeks');

/** A day known worse than this would only flatten the picture; its band begins where there is something to see. */
const SHOWN_SD_KG = 3;

/** The readings as dots, the estimate as a line, and how sure it is as a band. */
export function MassSection({ now }: { readonly now: BodyNow }): JSX.Element {
  const { unit, shown } = massUnit.value;
  const all = now.answer.days.flatMap(({ date, massKg }) => {
    const day = parseDate(date);
    return day === undefined || massKg.sd > SHOWN_SD_KG
      ? []
      : [{ day, mean: shown(massKg.mean), within: shown(NINETY * massKg.sd) }];
  });
  const last = all.at(-1);
  const from = span.value === 'everything' || !last ? Number.NEGATIVE_INFINITY : last.day - SIX_WEEKS;
  const days = all.filter(({ day }) => day >= from);
  const readings = weighIns.value.flatMap(({ day: date, massKg }) => {
    const day = parseDate(date);
    return day === undefined || day < from ? [] : [{ day, value: shown(massKg) }];
  });
  return (
    <Section title="Scale and body" detail="dots are the scale, the line is the body">
      <TimeChart
        title="Body mass"
        unit={unit}
        sentence={movedWords(days, unit)}
        decimals={1}
        bands={[
          {
            name: '9 times of 10',
            points: days.map(({ day, mean, within }) => ({ day, low: mean - within, high: mean + within })),
          },
        ]}
        lines={[{ name: 'Body', look: 'solid', points: days.map(({ day, mean }) => ({ day, value: mean })) }]}
        dots={[{ name: 'Scale', points: readings }]}
      />
      {all.length > SIX_WEEKS && (
        <ChoiceField
          label="How far back"
          layout="row"
          value={span.value}
          options={[
            { value: 'six weeks', label: 'Six weeks' },
            { value: 'everything', label: 'All of it' },
          ]}
          onValue={(chosen) => (span.value = chosen)}
        />
      )}
    </Section>
  );
}

interface ShownDay {
  readonly day: number;
  readonly mean: number;
  readonly within: number;
}

/** What the picture says: from, to, and whether the difference is more than the doubt. */
function movedWords(days: readonly ShownDay[], unit: string): string {
  const [first, last] = [days[0], days.at(-1)];
  if (!first || !last || first === last) return 'The line begins with the next weigh-ins.';
  const moved = last.mean - first.mean;
  const beyond = Math.abs(moved) > Math.hypot(first.within, last.within);
  const way = moved < 0 ? 'down' : 'up';
  const span = `from ${first.mean.toFixed(1)} to ${last.mean.toFixed(1)} ${unit} in ${last.day - first.day} days`;
  return beyond ? `${Math.abs(moved).toFixed(1)} ${unit} ${way}, ${span}.` : `No move beyond noise: ${span}.`;
}
