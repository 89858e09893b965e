import { roundTo } from '#core/units/rounding.ts';
import { followsWithoutRest } from '../session/follows-without-rest.ts';
import { kg, sentenceOfSet, wordsOfLoad } from '../session/set-words.ts';
import { oneRepEquations, PUBLISHED_ERROR_PERCENT, STUDIED_REPS } from '../strength/one-rep-equations.ts';
import type { AskedSet } from './ask-set.ts';
import type { SetToCome, WhatToBeat } from './what-to-beat.ts';

/** Why a set is asked for as it is, in plain sentences with the numbers that decided it. */
export function beatWords(beat: Omit<WhatToBeat, 'why'>, ahead: SetToCome): string[] {
  const { last, best, asked, slip } = beat;
  if (!asked) return [nothingWords(ahead.set)];
  return [
    ...(last
      ? [`Last time, on ${last.day}: ${sentenceOfSet(last.fact.data)}.`]
      : ['Nothing comparable is logged yet.']),
    ...(best && best.fact !== last?.fact
      ? [`The best so far, on ${best.day}: ${sentenceOfSet(best.fact.data)}.`]
      : []),
    ...(slip
      ? [
          `${sentenceOfSet(slip.fact.data)} on ${slip.day} lies far above everything before it and is no mark to beat; correct it in the Journal if it was a slip.`,
        ]
      : []),
    ...expectedWords(beat, asked),
    ruleWords(asked, ahead),
    ...loadWords(beat),
    ...oneRepWords(beat),
  ];
}

function nothingWords(set: SetToCome['set']): string {
  switch (set) {
    case 'drop':
      return 'No such drop is logged yet: take off a fifth to a quarter and go on without rest (common practice, no source).';
    case 'rest-pause':
      return 'No such set is logged yet: keep the load, rest some breaths, and do what comes.';
    default:
      return 'Nothing comparable is logged yet: take a load you are sure of, and log what is left in reserve.';
  }
}

function expectedWords({ expected }: Omit<WhatToBeat, 'why'>, asked: AskedSet): string[] {
  if (!expected) return [];
  const { median, q05, q95 } = expected;
  return [
    `Today ${wordsOfLoad(asked.load)} is expected to allow ${median} repetitions to failure, nine times of ten between ${q05} and ${q95}; fatigue of this session, days since and body mass are in it.`,
  ];
}

function ruleWords({ rule, reps, load, chance }: AskedSet, ahead: SetToCome): string {
  const { caution, push } = ahead;
  const asks = `${wordsOfLoad(load)} for ${reps}`;
  const likely = chance === undefined ? '' : `, with a chance of ${roundTo(100 * chance, 0)} %`;
  switch (rule) {
    case 'one repetition more':
      return `One repetition more than last time is asked: ${asks}${likely}.`;
    case 'next load':
      return `Last time reached the most repetitions of the scheme, so the next load is asked: ${asks}${likely}.`;
    case 'lighter for the scheme':
      return `With the load of last time the repetitions of the scheme are out of reach, so a lighter one is asked: ${asks}${likely}.`;
    case 'as the template says':
      return ahead.share === undefined
        ? `The template names the load: ${asks} is asked${likely}.`
        : `The template asks for ${roundTo(100 * ahead.share, 0)} % of the top set: ${asks}${likely}.`;
    case 'as the weaker side':
      return `The weaker side did ${asks}; the stronger side does no more, so that the sides come together (common practice, no source).`;
    case 'as last time':
      if (followsWithoutRest(ahead.set)) return `As much as in the same set last time is asked: ${asks}.`;
      return push === 'match'
        ? `As much as last time is asked, not more: ${asks}${likely}. Holding strength is the aim now.`
        : `As much as last time is asked: ${asks}${likely}; more is unlikely today.`;
    case 'less today':
      return `As much as last time is unlikely today; ${asks} is asked${likely}. That is a day, not a loss.`;
    case 'held by the caution': {
      const bounds = [
        ...(caution.ceilingKg === undefined ? [] : [`at most ${kg(caution.ceilingKg)}`]),
        ...(caution.repsFloor === undefined ? [] : [`at least ${caution.repsFloor} repetitions`]),
      ];
      return `The caution of this exercise holds it: ${bounds.join(', ')}; ${asks} is asked${likely}.`;
    }
  }
}

function loadWords({ loadForReps }: Omit<WhatToBeat, 'why'>): string[] {
  if (!loadForReps) return [];
  const { reps, loadKg, sdShare } = loadForReps;
  return [
    `For ${reps} repetitions with the reserve wanted the load would be about ${roundTo(loadKg, 0)} kg in comparable kilograms, give or take ${roundTo(100 * sdShare, 0)} %.`,
  ];
}

function oneRepWords({ oneRep }: Omit<WhatToBeat, 'why'>): string[] {
  if (!oneRep) return [];
  if (!oneRep.studied)
    return [
      `The best set lies outside the repetitions on which one-repetition equations were studied (${STUDIED_REPS.low} to ${STUDIED_REPS.high}), so none is worked out.`,
    ];
  const { lowKg, medianKg, highKg } = oneRep.value;
  const { low, high } = PUBLISHED_ERROR_PERCENT;
  return [
    `One-repetition maximum from the best set by ${oneRepEquations.length} published equations: ${roundTo(medianKg, 0)} kg, between ${roundTo(lowKg, 0)} kg and ${roundTo(highKg, 0)} kg; their error was ${low} to ${high} % where it was measured.`,
  ];
}
