import type { LastWeek, LastWeekDay } from '#core/course/last-week.ts';
import { stretchIds } from '#core/course/stretch-ids.ts';
import type { LastWeekNow } from '#core/cycle/last-week-now.ts';
import { shapeOfDay } from '#core/day/shape-of-day.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { addDays, daysBetween } from '#core/units/civil-date.ts';
import type { NewFact } from '../../state/open-journal.ts';

/** What is written, and the entries that give way to it. */
export interface Writing {
  readonly facts: NewFact[];
  readonly removing: readonly string[];
}

/**
 * The last week adopted: the load and the day of the show as stretches, so that the forecast knows their water; targets of these
 * days, so that Day plans from them; no hard training in the last two days. What was adopted before gives way.
 */
export function lastWeekFacts(ledger: Ledger, now: LastWeekNow): Writing {
  const { plan, show } = now;
  const ids = stretchIds(show.show);
  const facts = [
    ...loadFacts(plan, ids.load, 0),
    ...dayFacts(plan, ids.day),
    ...restFacts(
      ledger,
      plan.days.filter(({ daysOut }) => daysOut <= 2),
    ),
  ];
  const stale = [ids.load, ids.day].filter((id) => !writes(facts, id));
  return {
    facts: [...facts, ...stale.flatMap((id) => calledOff(ledger, id))],
    removing: [ids.load, ids.day].flatMap((id) => targetsOf(ledger, id)),
  };
}

/** The same load weeks before: its days, and the morning after it for photographs, as a date on the run sheet. */
export function rehearsalFacts(
  ledger: Ledger,
  now: LastWeekNow,
  { today, on, event }: { readonly today: string; readonly on: string; readonly event: string },
): Writing {
  const { plan, show } = now;
  const { rehearsal } = stretchIds(show.show);
  const shift = daysBetween(show.date, on);
  return {
    facts: [
      ...loadFacts(plan, rehearsal, shift),
      {
        kind: 'event-dated',
        data: {
          event,
          title: 'Rehearsal: photographs in the stage poses, notes',
          type: 'rehearsal',
          date: on,
          at: '08:00',
          minutes: 45,
          show: show.show,
        },
      },
    ],
    removing: [...targetsOf(ledger, rehearsal, today), ...datesToGo(ledger, show.show)],
  };
}

/** A rehearsal still ahead taken off the plan: its load, its targets, its morning. */
export function rehearsalOff(ledger: Ledger, show: string, today: string): Writing {
  const { rehearsal } = stretchIds(show);
  return {
    facts: calledOff(ledger, rehearsal),
    removing: [...targetsOf(ledger, rehearsal, today), ...datesToGo(ledger, show)],
  };
}

/** A rehearsal that was dated but not done gives way to the one planned now. */
function datesToGo(ledger: Ledger, show: string): readonly string[] {
  return ledger
    .of('event-dated')
    .filter(({ data }) => data.type === 'rehearsal' && data.show === show && data.done !== true)
    .map(({ entry }) => entry.id);
}

function loadFacts({ days }: LastWeek, stretch: string, shiftDays: number): NewFact[] {
  const loading = days.filter(({ role }) => role === 'load');
  const [first, last] = [loading[0], loading.at(-1)];
  if (!first || !last) return [];
  return stretchAndTarget(first, stretch, addDays(first.date, shiftDays), addDays(last.date, shiftDays));
}

function dayFacts({ days }: LastWeek, stretch: string): NewFact[] {
  const day = days.find(({ role }) => role === 'show');
  return day && days.some(({ role }) => role === 'load')
    ? stretchAndTarget(day, stretch, day.date, day.date)
    : [];
}

function stretchAndTarget(day: LastWeekDay, stretch: string, from: string, until: string): NewFact[] {
  const { energyKcal, proteinG, carbohydrateG, fatG, fibreMaxG, waterMl } = day;
  return [
    {
      kind: 'stretch-planned',
      data: { stretch, type: 'higher-carbohydrate days', from, until, energyKcal, carbohydrateG },
    },
    {
      kind: 'target-set',
      data: {
        from,
        until,
        dayKind: 'every',
        basis: 'course',
        proteinG,
        carbohydrateG,
        fatG,
        ...(fibreMaxG !== undefined && { fibreMaxG }),
        ...(waterMl !== undefined && { waterMl }),
      },
    },
  ];
}

/** The days without training keep their waking, sleep and walks. */
function restFacts(ledger: Ledger, days: readonly LastWeekDay[]): NewFact[] {
  return days.flatMap(({ date, role }): NewFact[] => {
    const shape = shapeOfDay(ledger, date);
    if (role === 'show' || !shape?.training) return [];
    const { training: _training, dayKind: _kind, ...rest } = shape.fact.data;
    return [{ kind: 'day-shaped', data: { ...rest, scope: { of: 'day' } }, day: date }];
  });
}

function newestStretch(ledger: Ledger, id: string): DataOf<'stretch-planned'> | undefined {
  return ledger.of('stretch-planned').findLast(({ data }) => data.stretch === id)?.data;
}

/** Entries of the targets that came with a stretch, unless it was over before `today`: what was lived stays. */
function targetsOf(ledger: Ledger, id: string, today = ''): readonly string[] {
  const stretch = newestStretch(ledger, id);
  if (!stretch || stretch.cancelled === true || stretch.until < today) return [];
  return ledger
    .of('target-set')
    .filter(
      ({ data }) => data.basis === 'course' && data.from === stretch.from && data.until === stretch.until,
    )
    .map(({ entry }) => entry.id);
}

function calledOff(ledger: Ledger, id: string): NewFact[] {
  const stretch = newestStretch(ledger, id);
  return stretch && stretch.cancelled !== true
    ? [{ kind: 'stretch-planned', data: { ...stretch, cancelled: true } }]
    : [];
}

function writes(facts: readonly NewFact[], id: string): boolean {
  return facts.some((fact) => fact.kind === 'stretch-planned' && fact.data.stretch === id);
}
