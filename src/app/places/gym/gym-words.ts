import type { Exercise } from '#core/gym/book/exercise-book.ts';
import { sentenceOfSet, wordsOfLoad } from '#core/gym/session/set-words.ts';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { SetKind } from '#core/journal/kinds/gym-scheme.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { say } from '../../views/say.ts';

/** A set in the athlete's own unit: "102.5 kg × 8, left, 1 in reserve". */
export function setWords(set: DataOf<'set-done'>): string {
  return times(say(sentenceOfSet(set)));
}

export function loadWords(load: SetLoad): string {
  return times(say(wordsOfLoad(load)));
}

function times(words: string): string {
  return words.replaceAll(' x ', ' × ');
}

export const SET_KINDS: Readonly<Record<SetKind, string>> = {
  'warm-up': 'Warm-up',
  working: 'Working set',
  top: 'Top set',
  'back-off': 'Back-off set',
  drop: 'Drop',
  'rest-pause': 'Rest-pause set',
};

/** What the caution of an exercise asks for, in words. */
export function cautionWords({ caution }: Exercise): { title: string; words: readonly string[] } | undefined {
  if (!caution) return undefined;
  const { joint, side, ceilingKg, repsFloor, tempo, words } = caution;
  const asks = [
    ...(ceilingKg === undefined ? [] : [say(`At most ${ceilingKg} kg.`)]),
    ...(repsFloor === undefined ? [] : [`At least ${repsFloor} repetitions.`]),
    ...(tempo === undefined ? [] : [tempoWords(tempo)]),
    ...(words === undefined ? [] : [words]),
  ];
  return { title: `Protect the ${side === undefined ? '' : `${side} `}${joint}`, words: asks };
}

/** "3-1-1-0" in words: seconds of lowering, pause, lifting, pause. */
export function tempoWords(tempo: string): string {
  const [lower, bottom, lift, top] = tempo.split('-');
  const pause = (seconds: string | undefined, where: string): string[] =>
    seconds === undefined || Number(seconds) === 0 ? [] : [`${seconds} s pause ${where}`];
  const up = lift === 'X' ? 'up as fast as it goes' : `${lift} s up`;
  return `Tempo: ${[`${lower} s down`, ...pause(bottom, 'at the bottom'), up, ...pause(top, 'at the top')].join(', ')}.`;
}
