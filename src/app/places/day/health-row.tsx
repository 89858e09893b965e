import type { JSX } from 'preact';
import type { DoseDone } from '#core/cycle/doses-of-day.ts';
import type { HealthThing } from '#core/cycle/health-rows.ts';
import type { RowState } from '#core/cycle/run-sheet.ts';
import type { ClockMinutes } from '#core/units/quantities.ts';
import { Button } from '../../parts/button.tsx';
import { RunRow, type RunState } from '../../parts/run-sheet.tsx';
import { pathTo } from '../../shell/route.ts';
import { nowClock } from '../../state/clock.ts';
import { doseWords, unitsWords } from '../../views/dose-words.ts';
import { takeDoses } from '../../views/take-dose.ts';
import { say } from '../../views/say.ts';

type DrawItems = Extract<HealthThing, { type: 'draw-lines' }>['items'];

interface HealthRowProps {
  readonly at: ClockMinutes;
  readonly thing: HealthThing;
  readonly state: RowState;
  readonly look: RunState;
}

/** Doses and the days before a draw, as lines of the run sheet. */
export function HealthRow({ at, thing, state, look }: HealthRowProps): JSX.Element {
  switch (thing.type) {
    case 'doses':
      return <DosesRow at={at} thing={thing} state={state} look={look} />;
    case 'dose-done':
      return <DoneRow at={at} done={thing.done} />;
    case 'draw-lines':
      return (
        <RunRow
          at={at}
          title={
            thing.items.some(({ kind }) => kind === 'morning') ? 'Blood draw today' : 'Before the blood draw'
          }
          detail={say(drawWords(thing.items))}
          state="planned"
          href={pathTo('health', 'draw')}
        />
      );
    case 'draw':
      return (
        <RunRow
          at={at}
          title={`Blood draw${thing.laboratory === undefined ? '' : `, ${thing.laboratory}`}`}
          state={look}
          href={pathTo('health', 'draw')}
        />
      );
  }
}

/** So long before its time a group stands open with its buttons. */
const OPEN_BEFORE = 30;

function DosesRow({
  at,
  thing: { group },
  state,
  look,
}: Omit<HealthRowProps, 'thing'> & {
  readonly thing: Extract<HealthThing, { type: 'doses' }>;
}): JSX.Element {
  const { items, slot, key } = group;
  const open = state === 'next' || group.at <= nowClock.value + OPEN_BEFORE;
  const path = pathTo('day', 'doses', key);
  return (
    <RunRow
      at={at}
      title={slot === undefined ? 'Supplements' : 'With the meal'}
      detail={items.map(doseWords).join('; ')}
      state={look}
      {...(!open && { href: path })}
    >
      {open && (
        <div class="row">
          <Button records onPress={() => void takeDoses(items)}>
            {items.length === 1 ? 'Taken' : `All ${items.length} taken`}
          </Button>
          <Button kind="quiet" href={path}>
            {items.length === 1 ? 'Skip or change' : 'One by one, or skip'}
          </Button>
        </div>
      )}
    </RunRow>
  );
}

function DoneRow({ at, done }: { readonly at: ClockMinutes; readonly done: DoseDone }): JSX.Element {
  const { fact, name, unit } = done;
  const taken = fact.kind === 'supplement-taken';
  return (
    <RunRow
      at={at}
      title={name}
      detail={taken ? `${unitsWords(fact.data.units, unit)} taken` : fact.data.reason}
      state={taken ? 'done' : 'skipped'}
      href={pathTo('journal', 'entry', fact.entry.id)}
    />
  );
}

/** On the morning itself all of it; on the days before, the first of it: the rest is a tap away. */
function drawWords(items: DrawItems): string {
  if (items.some(({ kind }) => kind === 'morning')) return items.map(({ words }) => words).join(' ');
  return `${(items[0]?.words ?? '').split(';')[0] ?? ''}${items.length > 1 ? ` (${items.length - 1} more)` : ''}`;
}
