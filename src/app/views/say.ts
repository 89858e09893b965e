import { spoken } from '#core/words/spoken.ts';
import { massUnit } from './mass-units.ts';

/** A sentence of the core in the athlete's own unit, its dates in words. */
export function say(sentence: string): string {
  return spoken(sentence, massUnit.value.unit);
}
