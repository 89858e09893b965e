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
  /** The day whose sets the share is taken of: that of the newest note that counts. */
  readonly heldFrom: string | undefined;
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
/** Faint pain has to be noted so often before it is said to go on. Common practice, no source. */
const FAINT_NOTES = 3;

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
  const unheld = { notes, ceilingShare: 1, heldFrom: undefined };
  if (newest.data.score === 0) return { ...unheld, seekCare: undefined, words: goneWords(newest) };
  const lasting = sinceGone(notes);
  const counting = lasting.filter(({ data }) => data.score >= COUNTS_FROM);
  const recent = counting.filter(({ day }) => daysBetween(day, newest.day) <= REPEATED_DAYS);
  const repeated = new Set(recent.map(({ day }) => day)).size >= 2;
  return {
    ...unheld,
    ...(repeated && { ceilingShare: LOWERED_SHARE, heldFrom: recent[0]?.day }),
    seekCare: careReason(lasting, recent),
    words: [
      noteWords(newest),
      ...(repeated ? ['Noted more than once: the load is held 10 % lower.'] : []),
    ].join(' '),
  };
}

/** What was noted before the exercise was last free of pain is over. */
function sinceGone(notes: readonly PainNote[]): readonly PainNote[] {
  const gone = notes.findIndex(({ data }) => data.score === 0);
  return gone < 0 ? notes : notes.slice(0, gone);
}

function careReason(notes: readonly PainNote[], recent: readonly PainNote[]): string | undefined {
  const signs = notes.find(({ data }) => (data.signs ?? []).length > 0);
  if (signs)
    return `${(signs.data.signs ?? []).join(', ')}: leave this exercise out and have a clinician look at it before the next heavy set.`;
  if (notes.some(({ data }) => data.score >= SEVERE_FROM))
    return 'Severe pain: leave this exercise out and have a clinician look at it.';
  if (goesOn(recent) || (notes.length >= FAINT_NOTES && goesOn(notes)))
    return 'It has gone on for two weeks and more: have a clinician look at it.';
  return undefined;
}

function goesOn(notes: readonly PainNote[]): boolean {
  const [newest, oldest] = [notes[0], notes.at(-1)];
  return newest !== undefined && oldest !== undefined && daysBetween(oldest.day, newest.day) >= PERSISTS_DAYS;
}

function noteWords({ day, data }: PainNote): string {
  const side = data.side === undefined ? '' : `${data.side} `;
  const own = data.words === undefined ? '' : `: ${data.words}`;
  return `On ${day} ${side}${data.joint} ${data.score} of 10${own}.`;
}

function goneWords({ day, data }: PainNote): string {
  return `On ${day} ${data.joint}: gone.`;
}

export interface HeldCaution {
  readonly ceilingKg?: Kilograms | undefined;
  readonly repsFloor?: number | undefined;
}

/** What lay on in the sets that hurt, as the ceiling counts it, and the body mass lifted along with it. */
export interface HurtLoad {
  readonly figureKg: Kilograms;
  readonly bodyKg: Kilograms;
}

/**
 * The caution of an exercise with what pain has lowered (GYM-62): a share of the sets that hurt, not of those lifted
 * since, so that a load once lowered is not lowered again by being kept. The ceiling only ever narrows.
 */
export function cautionWithPain(
  caution: HeldCaution | undefined,
  pain: PainOfExercise | undefined,
  hurt: HurtLoad | undefined,
): HeldCaution {
  const own = caution?.ceilingKg;
  if (!pain || pain.ceilingShare === 1 || (own === undefined && !hurt)) return caution ?? {};
  const figureKg = Math.min(own ?? Number.POSITIVE_INFINITY, hurt?.figureKg ?? Number.POSITIVE_INFINITY);
  const bodyKg = hurt?.bodyKg ?? 0;
  return { ...caution, ceilingKg: (figureKg + bodyKg) * pain.ceilingShare - bodyKg };
}
