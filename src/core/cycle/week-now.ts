import { type Feelings, gatherWeek, type WeekEvidence } from '../course/gather-week.ts';
import { propose, type Proposal } from '../course/propose.ts';
import { weeklyRecovery, type WeeklyRecovery } from '../health/recovery/weekly-recovery.ts';
import type { Fact, Ledger } from '../journal/ledger.ts';
import type { StrengthKept } from '../gym/strength/strength-kept.ts';
import { addDays, daysBetween } from '../units/civil-date.ts';
import type { CourseAsk } from './course-ask.ts';
import type { CourseNow } from './course-now.ts';

/** The week looked at, what speaks for and against a change, and what is proposed. */
export interface WeekNow {
  readonly evidence: WeekEvidence;
  readonly proposal: Proposal;
}

/** Last day of the week a check-in on a day looks at: the day before, for today is not over. */
export function weekUntil(today: string): string {
  return addDays(today, -1);
}

/** The last check-in about a week before the one that ends on a day. */
export function checkInBefore(ledger: Ledger, until: string): Fact<'check-in-closed'> | undefined {
  return ledger.of('check-in-closed').findLast((fact) => fact.data.week < until);
}

/** A check-in is due a week after the last, or a week after the first weigh-in where there was none (RUN-27). */
export function isCheckInDue(ledger: Ledger, today: string): boolean {
  const until = weekUntil(today);
  const last = ledger.latest('check-in-closed')?.data.week ?? ledger.of('body-weighed')[0]?.day;
  return last !== undefined && daysBetween(last, until) >= 7;
}

/** How the week a check-in looks at felt, by the short daily notes (HLT-60). */
export function weekFelt(ledger: Ledger, today: string): WeeklyRecovery {
  return weeklyRecovery(ledger, addDays(weekUntil(today), -6), ledger.latest('preparation-begun')?.data.from);
}

/** Gathers the week and proposes (RUN-27), from the course as it stands and how the week felt. */
export function weekNow(
  ask: CourseAsk,
  now: Pick<CourseNow, 'past' | 'answer'>,
  feelings: Feelings,
  feelingsBefore: Feelings | undefined,
  strength: StrengthKept | undefined,
): WeekNow {
  const until = weekUntil(ask.today);
  const evidence = gatherWeek({
    until,
    rows: ask.log.days.filter(({ date }) => date <= until),
    estimated: now.past,
    planned: ask.planned,
    feelings,
    feelingsBefore,
    strength,
  });
  return { evidence, proposal: propose(now.answer.verdict, evidence) };
}
