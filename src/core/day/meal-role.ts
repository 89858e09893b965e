import type { ClockMinutes } from '../units/quantities.ts';
import type { DaySituation } from './day-situation.ts';

export type MealRole = 'before-training' | 'after-training' | 'away';

const BEFORE_TRAINING_MINUTES = 4 * 60;
const AFTER_TRAINING_MINUTES = 3 * 60;

/** What a meal at this time is to the day's training; both ends of either stretch belong to it. Rule DAY-10. */
export function mealRole(at: ClockMinutes, day: Pick<DaySituation, 'training' | 'rules'>): MealRole {
  if (day.training === undefined) return 'away';
  const { start, end } = day.training;
  if (at >= start - BEFORE_TRAINING_MINUTES && at <= start - day.rules.mealToTrainingMinutes) {
    return 'before-training';
  }
  return at >= end && at <= end + AFTER_TRAINING_MINUTES ? 'after-training' : 'away';
}
