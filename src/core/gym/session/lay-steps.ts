import type {
  BodySide,
  SessionBlock,
  SessionSlot,
  SetKind,
  SetScheme,
} from '#core/journal/kinds/gym-scheme.ts';
import { followsWithoutRest } from './follows-without-rest.ts';

/** One set to do, in the order it is walked. */
export interface Step {
  readonly block: string;
  readonly slot: string;
  readonly set: SetKind;
  /** Counts within slot and kind, from 1. */
  readonly number: number;
  readonly side: BodySide | undefined;
  readonly target: Target;
}

export type Target = Pick<SetScheme, 'reps' | 'rir' | 'loadKg' | 'share' | 'tempo' | 'restSeconds'>;

/** Whether a slot is done one side at a time, and which side goes first. */
export type SidesOf = (slot: SessionSlot) => readonly BodySide[] | undefined;

interface PlannedSet {
  readonly set: SetKind;
  readonly number: number;
  readonly target: Target;
}

/**
 * The sets of a session in walking order (GYM-33). One slot alone: its sets as they stand. Several slots: the warm-ups
 * of each in turn, then rounds, one set of each slot with the drops and rest-pause sets that hang on it. One side at a
 * time: both sides of a set, drops included, before the next.
 */
export function laySteps(blocks: readonly SessionBlock[], sidesOf: SidesOf): readonly Step[] {
  return blocks.flatMap(({ block, slots }) => {
    const parted = slots.map((slot) => partsOf(slot, sidesOf(slot)));
    if (parted.length === 1) {
      return (parted[0]?.parts ?? []).flatMap((part) => stepsOf(block, parted[0]?.slot ?? '', part));
    }
    const warmUps = parted.flatMap(({ slot, parts }) =>
      parts.filter(isWarmUp).flatMap((part) => stepsOf(block, slot, part)),
    );
    return [...warmUps, ...roundsOf(block, parted)];
  });
}

/** A set with what hangs on it, and the sides it is done on. */
interface Part {
  readonly sets: readonly PlannedSet[];
  readonly sides: readonly BodySide[] | undefined;
}

interface PartedSlot {
  readonly slot: string;
  readonly parts: readonly Part[];
}

function isWarmUp({ sets }: Part): boolean {
  return sets[0]?.set === 'warm-up';
}

function roundsOf(block: string, parted: readonly PartedSlot[]): Step[] {
  const working = parted.map(({ slot, parts }) => ({ slot, parts: parts.filter((part) => !isWarmUp(part)) }));
  const rounds = Math.max(...working.map(({ parts }) => parts.length));
  const steps: Step[] = [];
  for (let round = 0; round < rounds; round++) {
    for (const { slot, parts } of working) {
      const part = parts[round];
      if (part) steps.push(...stepsOf(block, slot, part));
    }
  }
  return steps;
}

function stepsOf(block: string, slot: string, { sets, sides }: Part): Step[] {
  const walked = sides ?? [undefined];
  return walked.flatMap((side) => sets.map((set) => ({ block, slot, side, ...set })));
}

function partsOf({ slot, sets }: SessionSlot, sides: readonly BodySide[] | undefined): PartedSlot {
  const counts = new Map<SetKind, number>();
  const parts: { sets: PlannedSet[]; sides: readonly BodySide[] | undefined }[] = [];
  for (const { set, count, ...target } of sets) {
    for (let i = 0; i < count; i++) {
      const number = (counts.get(set) ?? 0) + 1;
      counts.set(set, number);
      const last = parts.at(-1);
      if (followsWithoutRest(set) && last) last.sets.push({ set, number, target });
      else parts.push({ sets: [{ set, number, target }], sides });
    }
  }
  return { slot, parts };
}
