import type { JSX } from 'preact';
import type { ShowDayNow, ShowRow } from '#core/cycle/show-day-now.ts';
import { formatClock } from '#core/units/clock.ts';
import { PrintSheet, StepBox } from '../../print/print-sheet.tsx';
import { showDetail } from '../day/show-row.tsx';
import './show-paper.css';

/** The show day for the lid of the bag: on paper only, with boxes to tick by pencil. */
export function ShowPaper({ day }: { readonly day: ShowDayNow }): JSX.Element {
  const { show, movedBy } = day;
  return (
    <div class="show-paper">
      <PrintSheet
        title={show.name}
        date={show.date}
        version={movedBy === 0 ? 'as the running order has it' : 'after the stage was moved'}
      >
        {day.rows.map((row) => (
          <StepBox key={`${row.task.at} ${row.task.title}`}>
            <strong>{`${formatClock(row.task.at)} ${row.task.title}`}</strong>
            {` ${foodWords(row)}`}
          </StepBox>
        ))}
        <h3>In the bag</h3>
        {day.bag.map(({ thing }) => (
          <StepBox key={thing}>{thing}</StepBox>
        ))}
      </PrintSheet>
    </div>
  );
}

/** What a small meal holds: its plate where one is planned, its macros where not. */
export function foodWords({ task, plate }: ShowRow): string {
  const items = plate?.items.map(({ name, grams }) =>
    grams === undefined ? name : `${Math.round(grams)} g ${name}`,
  );
  if (items && items.length > 0) return items.join(', ');
  return task.meal && task.meal.carbohydrateG > 0 ? (showDetail(task) ?? '') : '';
}
