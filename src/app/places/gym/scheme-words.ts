import { say } from '../../views/say.ts';
import type { SchemeDraft } from './day-draft.ts';
import { SET_KINDS } from './gym-words.ts';
import { restWords } from './set-draft.ts';

/** "3 working sets, 8 to 12, 1 in reserve, 2:00 rest". */
export function schemeWords(scheme: SchemeDraft): string {
  const { set, count, min, max, rir, loadKg, sharePercent, restSeconds, tempo } = scheme;
  const kind = SET_KINDS[set].toLowerCase();
  const plural = kind.endsWith('set') || kind.endsWith('up') || kind === 'drop' ? `${kind}s` : kind;
  const reps = min === undefined && max === undefined ? [] : [repsWords(min ?? max, max ?? min)];
  return [
    `${count ?? '?'} ${count === 1 ? kind : plural}`,
    ...reps,
    ...(loadKg === undefined ? [] : [say(`${loadKg} kg`)]),
    ...(sharePercent === undefined ? [] : [`${sharePercent} % of the top set`]),
    ...(rir === undefined ? [] : [`${rir} in reserve`]),
    ...(tempo === '' ? [] : [`tempo ${tempo}`]),
    ...(restSeconds === undefined ? [] : [`${restWords(restSeconds)} rest`]),
  ].join(', ');
}

function repsWords(min: number | undefined, max: number | undefined): string {
  return min === max ? `${min} repetitions` : `${min} to ${max} repetitions`;
}
