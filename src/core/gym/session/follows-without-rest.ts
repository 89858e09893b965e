import type { SetKind } from '#core/journal/kinds/gym-scheme.ts';

/** Drops and rest-pause sets hang on the set before: what they show is fatigue, so they are work and no evidence. */
export function followsWithoutRest(set: SetKind): boolean {
  return set === 'drop' || set === 'rest-pause';
}
