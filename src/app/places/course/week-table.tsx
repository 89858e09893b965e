import type { JSX } from 'preact';
import type { WeekEvidence, WeekFigures } from '#core/course/gather-week.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { Table } from '../../parts/table.tsx';
import { massUnit } from '../../views/mass-units.ts';

const UNKNOWN = 'unknown';

/** The week beside the week before. */
export function WeekTable({ evidence }: { readonly evidence: WeekEvidence }): JSX.Element {
  const { unit, shown } = massUnit.value;
  const { thisWeek, lastWeek } = evidence;
  const mass = (kg: number | undefined) => (kg === undefined ? UNKNOWN : `${shown(kg).toFixed(1)} ${unit}`);
  const share = (value: number | undefined) =>
    value === undefined ? 'no plan' : `${Math.round(100 * value)} %`;
  const line = (name: string, write: (week: WeekFigures) => string) => ({
    name,
    now: write(thisWeek),
    before: write(lastWeek),
  });
  return (
    <Table
      caption="Week against week"
      captionHidden
      columns={[
        { key: 'name', label: 'Week to' },
        { key: 'now', label: dayAndMonth(thisWeek.until), numeric: true },
        { key: 'before', label: dayAndMonth(lastWeek.until), numeric: true },
      ]}
      rows={[
        line('Body mass, estimated', (week) => mass(week.massKg)),
        line('Scale, average', (week) => mass(week.scaleKg)),
        line('Weigh-ins', (week) => `${week.weighIns} of 7`),
        line('Fat, estimated', (week) => mass(week.fatKg)),
        line('Food a day', (week) =>
          week.energyKcal === undefined ? UNKNOWN : `${Math.round(week.energyKcal)} kcal`,
        ),
        line('Days logged', (week) => `${week.loggedDays} of 7`),
        line('Food against plan', (week) => share(week.adherence)),
        line('Cardio a day', (week) => `${Math.round(week.cardioKcal)} kcal`),
      ]}
    />
  );
}
