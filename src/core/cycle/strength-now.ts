import { preparationStart, showsFrom } from '../course/read-course.ts';
import type { Push } from '../gym/beat/ask-set.ts';
import { strengthKept, type StrengthKept } from '../gym/strength/strength-kept.ts';
import { strengthLog, type StrengthLog } from '../gym/strength/strength-log.ts';
import type { Ledger } from '../journal/ledger.ts';
import { addDays, daysBetween } from '../units/civil-date.ts';

/** Strength kept since the preparation for the next show began; undefined where none began or no lift tells. */
export function strengthNow(
  ledger: Ledger,
  until: string,
  log: StrengthLog = strengthLog(ledger, until),
): StrengthKept | undefined {
  const from = preparationOf(ledger, until);
  return from === undefined || from >= until ? undefined : strengthKept(log, from, until);
}

/**
 * Strength kept since the first day of a body log, in a preparation (GYM-42): the estimate counts tissue lost from that
 * day, so strength has to be held against the same one.
 */
export function strengthSince(ledger: Ledger, from: string, until: string): StrengthKept | undefined {
  if (from >= until || preparationOf(ledger, until) === undefined) return undefined;
  return strengthKept(strengthLog(ledger, until), from, until);
}

function preparationOf(ledger: Ledger, day: string): string | undefined {
  const show = showsFrom(ledger, day)[0];
  return show && preparationStart(ledger, show.show);
}

/** Closer to the show than this, falling mass and lost strength together speak for holding. Common practice, no source. */
const NEAR_SHOW_DAYS = 56;
/** Loss from here on counts as a deficit, share of body mass a week. Common practice, no source. */
const DEFICIT_SHARE = 0.003;
const LOOK_BACK_DAYS = 28;

export interface PushNow {
  readonly push: Push;
  readonly words: string;
}

/** Whether sets ask for more than last time, or to match it (GYM-27). */
export function pushNow(
  ledger: Ledger,
  log: StrengthLog,
  kept: StrengthKept | undefined,
  today: string,
): PushNow {
  const show = showsFrom(ledger, today)[0];
  const days = show && daysBetween(today, show.date);
  const [before, now] = [log.massOn(addDays(today, -LOOK_BACK_DAYS)), log.massOn(today)];
  const lossShare =
    before === undefined || now === undefined ? 0 : (before - now) / before / (LOOK_BACK_DAYS / 7);
  const lost = kept !== undefined && kept.kept + 1.645 * kept.sd < 1;
  if (days !== undefined && days <= NEAR_SHOW_DAYS && lossShare >= DEFICIT_SHARE && lost)
    return {
      push: 'match',
      words:
        'The show is near, body mass is falling and strength has fallen beyond its noise: sets ask for as much as last time, not for more.',
    };
  return { push: 'more', words: 'Sets ask for a little more than last time where that is likely.' };
}
