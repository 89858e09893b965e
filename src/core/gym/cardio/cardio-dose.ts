import { addDays } from '#core/units/civil-date.ts';
import type { Kilocalories, Minutes } from '#core/units/quantities.ts';

export interface CardioWeek {
  readonly minutes: Minutes;
  readonly netKcal: Kilocalories;
  readonly sessions: number;
}

export interface CardioDose {
  readonly week: CardioWeek;
  readonly before: CardioWeek;
  /** Share by which minutes grew against the week before; undefined where there were none. */
  readonly growth: number | undefined;
}

export interface CardioLine {
  readonly day: string;
  readonly minutes: Minutes;
  /** Undefined where the activity is not known to the tables. */
  readonly netKcal: Kilocalories | undefined;
}

/** Minutes and net energy of the seven days up to a day, and of the seven before (GYM-80). */
export function cardioDose(lines: readonly CardioLine[], until: string): CardioDose {
  const week = weekOf(lines, addDays(until, -6), until);
  const before = weekOf(lines, addDays(until, -13), addDays(until, -7));
  return { week, before, growth: before.minutes > 0 ? week.minutes / before.minutes - 1 : undefined };
}

function weekOf(lines: readonly CardioLine[], from: string, until: string): CardioWeek {
  const inside = lines.filter(({ day }) => day >= from && day <= until);
  return {
    minutes: inside.reduce((sum, { minutes }) => sum + minutes, 0),
    netKcal: inside.reduce((sum, { netKcal = 0 }) => sum + netKcal, 0),
    sessions: inside.length,
  };
}
