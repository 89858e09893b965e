import * as v from 'valibot';
import type { Exercise } from '#core/gym/book/exercise-book.ts';
import { setKinds, tempo as tempoText, type SetScheme } from '#core/journal/kinds/gym-scheme.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';

type TrainingDay = DataOf<'session-planned'>;

const n = v.optional(v.number());

const schemeDraft = v.strictObject({
  set: v.picklist(setKinds),
  count: n,
  min: n,
  max: n,
  rir: n,
  loadKg: n,
  sharePercent: n,
  restSeconds: n,
  tempo: v.string(),
});
export type SchemeDraft = v.InferOutput<typeof schemeDraft>;

const slotDraft = v.strictObject({
  slot: v.string(),
  exercise: v.string(),
  machine: v.optional(v.string()),
  implement: v.optional(v.string()),
  sides: v.picklist(['together', 'one at a time']),
  sets: v.array(schemeDraft),
});
export type SlotDraft = v.InferOutput<typeof slotDraft>;

/** A training day being put together. Exercises of one block are walked together. */
export const dayDraft = v.strictObject({
  name: v.string(),
  blocks: v.array(v.strictObject({ block: v.string(), slots: v.array(slotDraft) })),
});
export type DayDraft = v.InferOutput<typeof dayDraft>;
type Blocks = DayDraft['blocks'];

export const emptyDay: DayDraft = { name: '', blocks: [] };

/** A new exercise starts so: three working sets with a little left (common practice, no source). */
export const newScheme: SchemeDraft = {
  set: 'working',
  count: 3,
  min: 8,
  max: 12,
  rir: 1,
  restSeconds: 120,
  tempo: '',
};

export function draftOfDay({ name, blocks }: TrainingDay, oneSide: (exercise: string) => boolean): DayDraft {
  return {
    name,
    blocks: blocks.map(({ block, slots }) => ({
      block,
      slots: slots.map(({ sets, sides, ...slot }) => ({
        ...slot,
        sides: sides ?? (oneSide(slot.exercise) ? 'one at a time' : 'together'),
        sets: sets.map(({ reps, share, tempo = '', ...scheme }) => ({
          ...scheme,
          tempo,
          ...(reps && { min: reps.min, max: reps.max }),
          ...(share !== undefined && { sharePercent: Math.round(100 * share) }),
        })),
      })),
    })),
  };
}

/** Another exercise, as a block of its own at the end. */
export function withExercise(typed: DayDraft, exercise: Exercise, slot: string): DayDraft {
  const added: SlotDraft = {
    slot,
    exercise: exercise.exercise,
    ...(exercise.machine !== undefined && { machine: exercise.machine }),
    ...(exercise.implement !== undefined && { implement: exercise.implement }),
    sides: exercise.oneSide ? 'one at a time' : 'together',
    sets: [newScheme],
  };
  return { ...typed, blocks: [...typed.blocks, { block: `block-${slot}`, slots: [added] }] };
}

export function withoutSlot(typed: DayDraft, slot: string): DayDraft {
  const blocks = typed.blocks.map((block) => ({
    ...block,
    slots: block.slots.filter((one) => one.slot !== slot),
  }));
  return { ...typed, blocks: blocks.filter(({ slots }) => slots.length > 0) };
}

/** A block one place earlier. */
export function earlier(typed: DayDraft, place: number): DayDraft {
  const [before, block] = [typed.blocks[place - 1], typed.blocks[place]];
  if (!before || !block) return typed;
  return { ...typed, blocks: typed.blocks.toSpliced(place - 1, 2, block, before) };
}

/** A block walked together with the one before it: a superset, with three and more a giant set. */
export function joined(typed: DayDraft, place: number): DayDraft {
  const [before, block] = [typed.blocks[place - 1], typed.blocks[place]];
  if (!before || !block) return typed;
  const together = { ...before, slots: [...before.slots, ...block.slots] };
  return { ...typed, blocks: typed.blocks.toSpliced(place - 1, 2, together) };
}

/** Each exercise of a block for itself again. */
export function parted(typed: DayDraft, place: number): DayDraft {
  const block = typed.blocks[place];
  if (!block) return typed;
  const single: Blocks = block.slots.map((slot, i) => ({
    block: i === 0 ? block.block : `block-${slot.slot}`,
    slots: [slot],
  }));
  return { ...typed, blocks: typed.blocks.toSpliced(place, 1, ...single) };
}

export function withSlot(typed: DayDraft, slot: string, part: Partial<SlotDraft>): DayDraft {
  return {
    ...typed,
    blocks: typed.blocks.map((block) => ({
      ...block,
      slots: block.slots.map((one) => (one.slot === slot ? { ...one, ...part } : one)),
    })),
  };
}

/** The day as the journal takes it (GYM-102); what is missing is named with its exercise. */
export function readDay(
  typed: DayDraft,
  template: string,
  nameOf: (exercise: string) => string,
): Outcome<TrainingDay> {
  const name = typed.name.trim();
  if (name === '')
    return refused(
      'gym/no-name',
      'name',
      'The training day has no name.',
      'Enter what you call it: legs, push.',
    );
  if (typed.blocks.length === 0)
    return refused('gym/no-exercise', 'blocks', 'The day has no exercise yet.', 'Add at least one.');
  const blocks: TrainingDay['blocks'] = [];
  for (const { block, slots } of typed.blocks) {
    const read: TrainingDay['blocks'][number]['slots'] = [];
    for (const { sets, ...slot } of slots) {
      const schemes = readSchemes(sets, nameOf(slot.exercise));
      if (!schemes.ok) return schemes;
      read.push({ ...slot, sets: schemes.value });
    }
    blocks.push({ block, slots: read });
  }
  return answered({ template, name, blocks });
}

function readSchemes(sets: readonly SchemeDraft[], name: string): Outcome<SetScheme[]> {
  const schemes: SetScheme[] = [];
  for (const scheme of sets) {
    const { set, count, min, max, rir, loadKg, sharePercent, restSeconds } = scheme;
    const tempo = scheme.tempo.trim();
    if (count === undefined)
      return refused('gym/no-count', 'count', `${name}: the number of sets is missing.`, 'Enter 1 or more.');
    if (min !== undefined && max !== undefined && max < min)
      return refused(
        'gym/reps-backwards',
        'max',
        `${name}: most repetitions is less than fewest.`,
        'Exchange the two.',
      );
    if (tempo !== '' && !v.safeParse(tempoText, tempo).success)
      return refused(
        'gym/tempo-unread',
        'tempo',
        `${name}: the tempo cannot be read.`,
        'Enter seconds of lowering, pause, lifting, pause: 3-1-1-0.',
      );
    const [low, high] = [min ?? max, max ?? min];
    schemes.push({
      set,
      count,
      ...(low !== undefined && high !== undefined && { reps: { min: low, max: high } }),
      ...(rir !== undefined && { rir }),
      ...(loadKg !== undefined && { loadKg }),
      ...(sharePercent !== undefined && { share: sharePercent / 100 }),
      ...(restSeconds !== undefined && { restSeconds }),
      ...(tempo !== '' && { tempo }),
    });
  }
  return schemes.length > 0
    ? answered(schemes)
    : refused('gym/no-sets', 'sets', `${name} has no sets.`, 'Add a kind of set, or take the exercise out.');
}
