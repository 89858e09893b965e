import * as v from 'valibot';
import type { Exercise } from '#core/gym/book/exercise-book.ts';
import { carriers } from '#core/journal/kinds/gym-equipment.ts';
import { tempo as tempoText } from '#core/journal/kinds/gym-scheme.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';

type ExerciseDescribed = DataOf<'exercise-described'>;

const n = v.optional(v.number());

/** An exercise being described; an empty machine or bar is none. */
export const exerciseDraft = v.strictObject({
  name: v.string(),
  carrier: v.optional(v.picklist(carriers)),
  machine: v.string(),
  implement: v.string(),
  main: v.boolean(),
  oneSide: v.boolean(),
  bodyPercent: n,
  prime: v.array(v.string()),
  assisting: v.array(v.string()),
  protect: v.boolean(),
  joint: v.string(),
  side: v.picklist(['left', 'right', 'both']),
  ceilingKg: n,
  repsFloor: n,
  tempo: v.string(),
  words: v.string(),
});
export type ExerciseDraft = v.InferOutput<typeof exerciseDraft>;

export function draftOfExercise(exercise: Exercise | undefined): ExerciseDraft {
  const { caution } = exercise ?? {};
  return {
    name: exercise?.name ?? '',
    ...(exercise?.carrier !== undefined && { carrier: exercise.carrier }),
    machine: exercise?.machine ?? '',
    implement: exercise?.implement ?? '',
    main: exercise?.main ?? false,
    oneSide: exercise?.oneSide ?? false,
    ...(exercise && exercise.bodyShare > 0 && { bodyPercent: Math.round(100 * exercise.bodyShare) }),
    prime: [...(exercise?.prime ?? [])],
    assisting: [...(exercise?.assisting ?? [])],
    protect: caution !== undefined,
    joint: caution?.joint ?? '',
    side: caution?.side ?? 'both',
    ...(caution?.ceilingKg !== undefined && { ceilingKg: caution.ceilingKg }),
    ...(caution?.repsFloor !== undefined && { repsFloor: caution.repsFloor }),
    tempo: caution?.tempo ?? '',
    words: caution?.words ?? '',
  };
}

/** The exercise as the journal takes it (GYM-103); the first missing field is answered by name. */
export function readExercise(typed: ExerciseDraft, exercise: string): Outcome<ExerciseDescribed> {
  const name = typed.name.trim();
  if (name === '')
    return refused('gym/no-name', 'name', 'The exercise has no name.', 'Enter what you call it.');
  if (typed.prime.length + typed.assisting.length > 16)
    return refused('gym/many-muscles', 'prime', 'More than 16 muscles are named.', 'Keep those that matter.');
  const caution = readCaution(typed);
  if (!caution.ok) return caution;
  const muscles = [
    ...typed.prime.map((muscle) => ({ muscle, part: 'prime' as const })),
    ...typed.assisting.map((muscle) => ({ muscle, part: 'assisting' as const })),
  ];
  const { carrier, machine, implement, main, oneSide, bodyPercent } = typed;
  return answered({
    exercise,
    name,
    main,
    sides: oneSide ? 'one at a time' : 'together',
    ...(muscles.length > 0 && { muscles }),
    ...(carrier !== undefined && { carrier }),
    ...(machine !== '' && { machine }),
    ...(implement !== '' && { implement }),
    ...(bodyPercent !== undefined && { bodyShare: bodyPercent / 100 }),
    ...(caution.value && { caution: caution.value }),
  });
}

function readCaution(typed: ExerciseDraft): Outcome<ExerciseDescribed['caution']> {
  if (!typed.protect) return answered(undefined);
  const [joint, tempo, words] = [typed.joint.trim(), typed.tempo.trim(), typed.words.trim()];
  const { side, ceilingKg, repsFloor } = typed;
  if (joint === '')
    return refused(
      'gym/no-joint',
      'joint',
      'It is not said what is protected.',
      'Enter the joint: knee, shoulder.',
    );
  if (tempo !== '' && !v.safeParse(tempoText, tempo).success)
    return refused(
      'gym/tempo-unread',
      'tempo',
      'The tempo cannot be read.',
      'Enter seconds of lowering, pause, lifting, pause: 3-1-1-0.',
    );
  return answered({
    joint,
    ...(side !== 'both' && { side }),
    ...(ceilingKg !== undefined && { ceilingKg }),
    ...(repsFloor !== undefined && { repsFloor }),
    ...(tempo !== '' && { tempo }),
    ...(words !== '' && { words }),
  });
}
