import type { JSX } from 'preact';
import type { AfterwardsNow } from '#core/cycle/afterwards-now.ts';
import { parseDate } from '#core/units/civil-date.ts';
import { TimeChart } from '../../charts/time-chart.tsx';
import { massUnit } from '../../views/mass-units.ts';

/** The band of the plan, as adopted where it was, and the weigh-ins since the show. */
export function WayBackChart({ now }: { readonly now: AfterwardsNow }): JSX.Element {
  const { unit, shown } = massUnit.value;
  const { adopted, plan, weighed } = now;
  const weeks =
    adopted?.weeks ??
    plan.weeks.map(({ from, massKg }) => ({ from, lowKg: massKg.low, highKg: massKg.high }));
  // Each week says where the scale may stand at its end.
  const points = weeks.map(({ from, lowKg, highKg }) => ({
    day: dayOf(from) + 6,
    low: shown(lowKg),
    high: shown(highKg),
  }));
  const [first, last] = [points[0], points.at(-1)];
  return (
    <TimeChart
      title="Body mass after the show"
      unit={unit}
      decimals={1}
      from={dayOf(now.show.date) - 4}
      sentence={
        first && last
          ? `${first.low.toFixed(1)} to ${first.high.toFixed(1)} ${unit} after a week, nearly all of the rise water; ${last.low.toFixed(1)} to ${last.high.toFixed(1)} ${unit} after ${weeks.length} weeks.`
          : ''
      }
      bands={[{ name: adopted ? 'The way back as adopted' : 'The way back as planned', points }]}
      dots={[
        {
          name: 'Weigh-ins',
          points: weighed.map(({ day, massKg }) => ({ day: dayOf(day), value: shown(massKg) })),
        },
      ]}
      marks={[{ day: dayOf(now.show.date), words: 'show' }]}
    />
  );
}

/** The journal's schema has checked the date. */
function dayOf(date: string): number {
  return parseDate(date) ?? 0;
}
