import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';

/** A load as it is spoken of: "102.5 kg", "2 x 30 kg", "far 20 kg, near 10 kg", "body weight and 10 kg". */
export function wordsOfLoad(load: SetLoad): string {
  switch (load.of) {
    case 'kg':
      return kg(load.kg);
    case 'each':
      return `2 x ${kg(load.kgEach)}`;
    case 'pegs':
      return load.pegs.map(({ peg, kg: mass }) => `${peg} ${kg(mass)}`).join(', ');
    case 'stack':
      return load.addOnKg === undefined ? kg(load.pinKg) : `${kg(load.pinKg)} and ${kg(load.addOnKg)} on top`;
    case 'body': {
      const belt = load.beltKg === undefined ? '' : ` and ${kg(load.beltKg)}`;
      const help = load.assistKg === undefined ? '' : ` less ${kg(load.assistKg)}`;
      return `body weight${belt}${help}`;
    }
    case 'band':
      return `band ${load.band}`;
  }
}

/** "102.5 kg x 8, left, 1 in reserve". */
export function sentenceOfSet({ load, reps, rir, side }: DataOf<'set-done'>): string {
  const parts = [`${wordsOfLoad(load)} x ${reps}`];
  if (side !== undefined) parts.push(side);
  if (rir !== undefined) parts.push(`${roundTo(rir, 1)} in reserve`);
  return parts.join(', ');
}

export function kg(mass: Kilograms): string {
  return `${roundTo(mass, 2)} kg`;
}
