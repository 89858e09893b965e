import { capital } from '#core/units/capital.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import { loadUnit } from '../../views/load-units.ts';
import type { Loadable, PlateChange, Stamp, StampedRamp } from './ramp-draft.ts';

type StampOf = (kg: Kilograms) => Stamp;

function list(plates: readonly Kilograms[], stampOf: StampOf): string {
  return plates.map((kg) => `${stampOf(kg).mass} ${stampOf(kg).unit}`).join(', ');
}

/** What the hands do: "Off 5 kg; on 10 kg, each side." */
export function changeWords(change: PlateChange, sides: 1 | 2, stampOf: StampOf): string {
  const parts = [
    ...(change.off.length > 0 ? [`off ${list(change.off, stampOf)}`] : []),
    ...(change.on.length > 0 ? [`on ${list(change.on, stampOf)}`] : []),
  ];
  if (parts.length === 0) return change.stays.length === 0 ? 'No plates.' : 'Nothing to change.';
  const sentence = `${parts.join('; ')}${sides === 2 ? ', each side' : ''}.`;
  return capital(sentence);
}

/** A drawn side in words, for those who do not see it. */
export function sideWords(perSide: readonly Kilograms[], sides: 1 | 2, stampOf: StampOf): string {
  return `${sides === 2 ? 'Each side' : 'The peg'}, inside first: ${list(perSide, stampOf)}`;
}

/** What is said where the plates do not make the load; undefined where they do. */
export function offWords(on: Loadable, wantedKg: Kilograms, { answer }: StampedRamp): string | undefined {
  if (answer.errorKg === 0) return undefined;
  const { unit, shown } = loadUnit.value;
  const written = (kg: Kilograms): string => `${shown(kg)} ${unit}`;
  if (on.emptyKg > wantedKg)
    return `Empty it weighs ${written(on.emptyKg)} already, more than the ${written(wantedKg)} wanted.`;
  return `${written(wantedKg)} cannot be made of these plates; ${written(wantedKg + answer.errorKg)} is the nearest.`;
}
