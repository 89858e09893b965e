import type { RunSheetRow } from '#core/cycle/run-sheet.ts';
import type { ClockMinutes } from '#core/units/quantities.ts';

export interface TimeMark {
  readonly at: ClockMinutes;
  readonly until?: ClockMinutes;
  readonly label: string;
  readonly kind: 'meal' | 'training' | 'cardio' | 'other';
  readonly state: 'done' | 'next' | 'planned';
}

/** The run sheet as marks on the day's rule. Waking and sleep are its ends and need none. */
export function timeMarks(rows: readonly RunSheetRow[]): readonly TimeMark[] {
  return rows.flatMap((row) => {
    const mark = markOf(row);
    const state = row.state === 'done' || row.state === 'next' ? row.state : 'planned';
    return mark ? [{ at: row.at, state, ...mark }] : [];
  });
}

function markOf({ at, thing }: RunSheetRow): Pick<TimeMark, 'until' | 'label' | 'kind'> | undefined {
  switch (thing.type) {
    case 'meal':
    case 'eaten':
      return { label: 'meal', kind: 'meal' };
    case 'training':
      return {
        label: thing.training.title ?? 'training',
        kind: 'training',
        until: at + thing.training.minutes,
      };
    case 'cardio':
      return { label: thing.cardio.activity, kind: 'cardio', until: at + thing.cardio.minutes };
    case 'task':
      return { label: thing.task.data.title, kind: 'other' };
    case 'draw':
      return { label: 'blood draw', kind: 'other' };
    case 'show':
      return { label: thing.task.title, kind: thing.task.meal ? 'meal' : 'other' };
    case 'doses':
    case 'dose-done':
    case 'draw-lines':
    case 'wake':
    case 'sleep':
      return undefined;
  }
}
