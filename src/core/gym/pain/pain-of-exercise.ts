import type { Fact, Ledger } from '#core/journal/ledger.ts';
import { addDays, daysBetween } from '#core/units/civil-date.ts';
import type { Kilograms } from '#core/units/quantities.ts';

export type PainNote = Fact<'pain-noted'>;

/** What noted pain asks for at one exercise. */
export interface PainOfExercise {
  /** The newest notes first. */
  readonly notes: readonly PainNote[];
  /** Share of the load that stays allowed; 1 where nothing is lowered. */
  readonly ceilingShare: number;
  /** Whether a clinician should look at it, and why; undefined where nothing asks for it. */
  readonly seekCare: string | undefined;
  readonly words: string;
}

/** Notes older than this are told no more. Common practice, no source. */
const TOLD_DAYS = 42;
/** Scores from here on count; below, it is noted and watched. Numeric rating scale: 4 to 6 moderate, 7 to 10 severe. */
const COUNTS_FROM = 4;
const SEVERE_FROM = 7;
/** Lowered by so much for a note repeated within four weeks. Common practice, no source. */
const LOWERED_SHARE = 0.9;
const REPEATED_DAYS = 28;
/** Pain that goes on so long is looked at by a clinician. Common practice, no source. */
const PERSISTS_DAYS = 14;

/**
 * Pain noted at an exercise up to a day (GYM-60): the last notes, a ceiling that a repeated note lowers, and the advice
 * to see a clinician where it persists, is severe, or comes with a sign that is never waited out. It diagnoses nothing.
 */
export function painOfExercise(ledger: Ledger, exercise: string, until: string): PainOfExercise | undefined {
  const notes = ledger
    .of('pain-noted')
    .filter(({ day, data }) => data.exercise === exercise && day <= until && day > addDays(until, -TOLD_DAYS))
    .toReversed();
  const newest = notes[0];
  if (!newest) return undefined;
  if (newest.data.score === 0)
    return { notes, ceilingShare: 1, seekCare: undefined, words: goneWords(newest) };
  const counting = notes.filter(({ data }) => data.score >= COUNTS_FROM);
  const recent = counting.filter(({ day }) => daysBetween(day, newest.day) <= REPEATED_DAYS);
  const repeated = new Set(recent.map(({ day }) => day)).size >= 2;
  const seekCare = careReason(notes, recent);
  return {
    notes,
    ceilingShare: repeated ? LOWERED_SHARE : 1,
    seekCare,
    words: [
      noteWords(newest),
      ...(repeated ? ['Noted more than once: the load is held 10 % lower.'] : []),
    ].join(' '),
  };
}

function careReason(notes: readonly PainNote[], recent: readonly PainNote[]): string | undefined {
  const signs = notes.find(({ data }) => (data.signs ?? []).length > 0);
  if (signs)
    return `${(signs.data.signs ?? []).join(', ')}: leave this exercise out and have a clinician look at it before the next heavy set.`;
  if (notes.some(({ data }) => data.score >= SEVERE_FROM))
    return 'Severe pain: leave this exercise out and have a clinician look at it.';
  const oldest = recent.at(-1);
  const newest = recent[0];
  if (oldest && newest && daysBetween(oldest.day, newest.day) >= PERSISTS_DAYS)
    return 'It has gone on for two weeks and more: have a clinician look at it.';
  return undefined;
}

function noteWords({ day, data }: PainNote): string {
  const side = data.side === undefined ? '' : `${data.side} `;
  const own = data.words === undefined ? '' : `: ${data.words}`;
  return `On ${day} ${side}${data.joint} ${data.score} of 10${own}.`;
}

function goneWords({ day, data }: PainNote): string {
  return `On ${day} ${data.joint}: gone.`;
}

/** The caution of an exercise with what pain has lowered: the ceiling only ever narrows. */
export function cautionWithPain(
  caution:
    | { readonly ceilingKg?: Kilograms | undefined; readonly repsFloor?: number | undefined }
    | undefined,
  pain: PainOfExercise | undefined,
  lastFigureKg: Kilograms | undefined,
): { readonly ceilingKg?: Kilograms | undefined; readonly repsFloor?: number | undefined } {
  if (!pain || pain.ceilingShare === 1) return caution ?? {};
  const from = caution?.ceilingKg ?? lastFigureKg;
  return { ...caution, ...(from !== undefined && { ceilingKg: from * pain.ceilingShare }) };
}
