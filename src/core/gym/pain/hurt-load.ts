import type { Exercise } from '../book/exercise-book.ts';
import { figureOfLoad } from '../loads/shift-load.ts';
import type { StrengthLog } from '../strength/strength-log.ts';
import type { HurtLoad, PainOfExercise } from './pain-of-exercise.ts';

/** The heaviest hard set of the last day of an exercise up to the newest note that counts (GYM-62). */
export function hurtLoad(
  { hardSets, massOn }: StrengthLog,
  { exercise, bodyShare }: Exercise,
  pain: PainOfExercise | undefined,
): HurtLoad | undefined {
  const until = pain?.heldFrom;
  if (until === undefined) return undefined;
  const upTo = hardSets.filter(({ day, data }) => data.exercise === exercise && day <= until);
  const day = upTo.at(-1)?.day;
  const ofDay = upTo.filter((set) => set.day === day);
  const figures = ofDay.flatMap(({ data }) => figureOfLoad(data.load) ?? []);
  if (day === undefined || figures.length === 0) return undefined;
  const onBody = ofDay.some(({ data }) => data.load.of === 'body');
  // Body weight is lifted along: a tenth less help would be more to lift.
  const bodyKg = onBody ? (bodyShare > 0 ? bodyShare : 1) * (massOn(day) ?? 0) : 0;
  return { figureKg: Math.max(...figures), bodyKg };
}
