import type { JSX } from 'preact';
import type { DatedEvent } from '#core/course/read-course.ts';
import type { EatenMeal, SheetItem, SheetMeal } from '#core/cycle/day-sheet.ts';
import type { RunSheetRow } from '#core/cycle/run-sheet.ts';
import { formatClock } from '#core/units/clock.ts';
import { capital } from '#core/units/capital.ts';
import { Button } from '../../parts/button.tsx';
import { Figure } from '../../parts/figure.tsx';
import { RunRow } from '../../parts/run-sheet.tsx';
import { Tag } from '../../parts/tag.tsx';
import { pathTo } from '../../shell/route.ts';
import { correct } from '../../state/open-journal.ts';
import { HealthRow } from './health-row.tsx';
import { MealItems } from './meal-items.tsx';
import { MealTools } from './meal-tools.tsx';
import { macroWords } from './macro-words.ts';
import { ShowRow } from './show-row.tsx';

/** One line of the run sheet; the next one stands open with what it needs. */
export function SheetRow({ row }: { readonly row: RunSheetRow }): JSX.Element {
  const { thing, at, state } = row;
  const look = state === 'missed' ? 'skipped' : state === 'ahead' ? 'planned' : state;
  switch (thing.type) {
    case 'wake':
    case 'sleep':
      return <RunRow at={at} title={thing.type === 'wake' ? 'Wake' : 'Sleep'} state={look} />;
    case 'training':
      return (
        <RunRow
          at={at}
          title={thing.training.title ?? 'Training'}
          detail={`${thing.training.minutes} min, until ${formatClock(at + thing.training.minutes)}`}
          state={look}
          href={pathTo('gym')}
        />
      );
    case 'cardio':
      return (
        <RunRow
          at={at}
          title={thing.cardio.activity}
          detail={`${thing.cardio.minutes} min${thing.cardio.beforeFood ? ', before food' : ''}`}
          state={look}
          {...(state !== 'done' && { href: pathTo('gym', 'cardio') })}
        />
      );
    case 'task':
      return (
        <RunRow at={at} title={thing.task.data.title} detail={taskWords(thing.task.data)} state={look}>
          {state !== 'done' && (
            <Button
              records
              onPress={() =>
                void correct(thing.task.entry.id, { ...thing.task.data, done: true }, { says: 'Done' })
              }
            >
              Done
            </Button>
          )}
        </RunRow>
      );
    case 'show':
      return <ShowRow show={thing.show} task={thing.task} state={state} look={look} />;
    case 'eaten':
      return <EatenRow eaten={thing.eaten} />;
    case 'meal':
      return <MealRow row={row} meal={thing.meal} open={state === 'next'} />;
    case 'doses':
    case 'dose-done':
    case 'draw-lines':
    case 'draw':
      return <HealthRow at={at} thing={thing} state={state} look={look} />;
  }
}

function EatenRow({ eaten }: { readonly eaten: EatenMeal }): JSX.Element {
  return (
    <RunRow
      at={eaten.at}
      title="Eaten"
      detail={names(eaten.items)}
      state="done"
      figures={<span class="soft">{macroWords(eaten.total)}</span>}
      href={pathTo('journal', 'entry', eaten.fact.entry.id)}
    />
  );
}

function MealRow({
  row,
  meal,
  open,
}: {
  readonly row: RunSheetRow;
  readonly meal: SheetMeal;
  readonly open: boolean;
}): JSX.Element {
  const late = meal.lateBy > 0 ? `, ${lateWords(meal.lateBy)} late` : '';
  return (
    <RunRow
      at={row.at}
      title={meal.state === 'skipped' ? 'Meal skipped' : `Meal${late}`}
      detail={open ? roleWords(meal) : names(meal.items)}
      state={meal.state === 'skipped' ? 'skipped' : open ? 'next' : 'planned'}
      figures={
        meal.planned.pinned ? (
          <Tag>pinned</Tag>
        ) : (
          <Figure
            value={meal.total.nutrients.energyKcal}
            unit="kcal"
            size="line"
            label="Energy"
            labelHidden
          />
        )
      }
      {...(!open && meal.state !== 'skipped' && { href: pathTo('day', 'weigh', meal.slot) })}
    >
      {open && (
        <>
          <MealItems meal={meal} />
          <MealTools meal={meal} />
        </>
      )}
    </RunRow>
  );
}

function names(items: readonly SheetItem[]): string {
  return capital(items.map((item) => item.name).join(', '));
}

/** The kind of task where its name does not say it, and how long it takes. */
function taskWords({ title, type, minutes }: DatedEvent): string | undefined {
  const kind = type === 'other' || title.toLowerCase().includes(type) ? [] : [type];
  return [...kind, ...(minutes === undefined ? [] : [`${minutes} min`])].join(', ') || undefined;
}

function lateWords(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = Math.round(minutes - hours * 60);
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

const ROLE: Record<SheetMeal['planned']['role'], string> = {
  'before-training': 'before training',
  'after-training': 'after training',
  away: 'away from training',
};

function roleWords(meal: SheetMeal): string {
  return `${ROLE[meal.planned.role]}; ${macroWords(meal.total)}`;
}
