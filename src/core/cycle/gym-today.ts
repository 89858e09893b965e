import { preparationStart, showsFrom } from '../course/read-course.ts';
import { shapeOfDay } from '../day/shape-of-day.ts';
import { cardioConflicts, isLegsDay } from '../gym/cardio/cardio-conflicts.ts';
import { cardioDose, type CardioDose } from '../gym/cardio/cardio-dose.ts';
import { openSession, type TrainingSession, trainingSessions } from '../gym/session/training-sessions.ts';
import type { StrengthLog } from '../gym/strength/strength-log.ts';
import { hardSetsByMuscle, type MuscleVolume } from '../gym/volume/hard-sets.ts';
import { type MuscleWeeks, volumeWeeks } from '../gym/volume/volume-weeks.ts';
import type { DataOf } from '../journal/kinds/registry.ts';
import type { Ledger } from '../journal/ledger.ts';
import { addDays } from '../units/civil-date.ts';
import { cardioEnergy } from './cardio-energy.ts';

export interface TemplateNow {
  readonly data: DataOf<'session-planned'>;
  /** Last day it was trained. */
  readonly lastDay: string | undefined;
}

/** What the Gym shows before a session is begun. */
export interface GymToday {
  readonly open: TrainingSession | undefined;
  readonly templates: readonly TemplateNow[];
  /** Template of today's training: named by the day's shape, else the one that has waited longest. */
  readonly suggested: string | undefined;
  readonly recent: readonly TrainingSession[];
  readonly volume: readonly MuscleVolume[];
  /** Hard sets week by week through the preparation, or the last twelve weeks where none has begun. */
  readonly volumeWeeks: readonly MuscleWeeks[];
  readonly cardio: CardioDose;
  /** What cardio of today gets in the way of. */
  readonly conflicts: readonly string[];
}

/** The gym as it stands on a day (GYM-36, GYM-71, GYM-80, GYM-81). */
export function gymToday(ledger: Ledger, log: StrengthLog, today: string, nowMs: number): GymToday {
  const sessions = trainingSessions(ledger);
  const templates = templatesOf(ledger, sessions);
  const open = openSession(ledger, nowMs);
  const counted = lastFullDay(log, open, today);
  return {
    open,
    templates,
    suggested: suggestedOf(ledger, templates, today),
    recent: sessions.toReversed().slice(0, 8),
    volume: hardSetsByMuscle(log.hardSets, log.book, counted),
    volumeWeeks: volumeWeeks(log.hardSets, log.book, volumeFrom(ledger, today), counted),
    cardio: cardioDose(cardioLines(ledger, log), today),
    conflicts: conflictsOf(ledger, log, templates, today),
  };
}

/** A day whose session is still to come or under way would make its week look short. */
function lastFullDay(log: StrengthLog, open: TrainingSession | undefined, today: string): string {
  const trained = log.hardSets.some(({ day }) => day === today);
  return trained && !open ? today : addDays(today, -1);
}

const USUAL_LOOK_BACK_DAYS = 84;

function volumeFrom(ledger: Ledger, today: string): string {
  const show = showsFrom(ledger, today)[0];
  return (show && preparationStart(ledger, show.show)) ?? addDays(today, -USUAL_LOOK_BACK_DAYS);
}

function templatesOf(ledger: Ledger, sessions: readonly TrainingSession[]): readonly TemplateNow[] {
  const newest = new Map(ledger.of('session-planned').map(({ data }) => [data.template, data]));
  return [...newest.values()]
    .filter(({ retired }) => retired !== true)
    .map((data) => ({
      data,
      lastDay: sessions.findLast(({ template }) => template === data.template)?.day,
    }));
}

function suggestedOf(ledger: Ledger, templates: readonly TemplateNow[], today: string): string | undefined {
  const training = shapeOfDay(ledger, today)?.training;
  const named = templates.find(
    ({ data }) => data.template === training?.template || data.name === training?.title,
  );
  const waited = templates.toSorted((a, b) => ((a.lastDay ?? '') < (b.lastDay ?? '') ? -1 : 1))[0];
  return (named ?? waited)?.data.template;
}

function cardioLines(ledger: Ledger, log: StrengthLog) {
  return ledger.of('cardio-done').map(({ day, data }) => ({
    day,
    minutes: data.minutes,
    netKcal: cardioEnergy(data, log.massOn(day) ?? 0)?.netKcal,
  }));
}

function conflictsOf(
  ledger: Ledger,
  log: StrengthLog,
  templates: readonly TemplateNow[],
  today: string,
): readonly string[] {
  const shape = shapeOfDay(ledger, today);
  if (!shape) return [];
  const suggested = suggestedOf(ledger, templates, today);
  const exercises =
    templates
      .find(({ data }) => data.template === suggested)
      ?.data.blocks.flatMap(({ slots }) => slots.map(({ exercise }) => exercise)) ?? [];
  return cardioConflicts({
    cardio: shape.cardio,
    training: shape.training && { ...shape.training, legs: isLegsDay(exercises, log.book) },
    sleep: shape.sleep,
  });
}
