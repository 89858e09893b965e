import type { JSX } from 'preact';
import type { Kilograms } from '#core/units/quantities.ts';
import { Figure } from '../../parts/figure.tsx';
import { loadDecimals, loadUnit } from '../../views/load-units.ts';
import { say } from '../../views/say.ts';
import { PlateDrawing } from './plate-drawing.tsx';
import { plateChange, type Loadable, type Stamp, type StampedRamp } from './ramp-draft.ts';

/** Warm-up sets and the top set, each with what the hands do and the side as it then stands. */
export function RampSets({ on, ramp }: { readonly on: Loadable; readonly ramp: StampedRamp }): JSX.Element {
  const { sets } = ramp.answer;
  return (
    <ol class="ramp" aria-label="Sets">
      {sets.map((set, place) => {
        const change = plateChange(sets[place - 1]?.perSide ?? [], set.perSide);
        const words = changeWords(change, on.sides, ramp.stampOf);
        return (
          <li class="ramp-set" key={place}>
            <div class="ramp-head">
              <Figure
                label={place === sets.length - 1 ? 'Top set' : `Warm-up ${place + 1}`}
                value={loadUnit.value.shown(set.loadKg)}
                decimals={loadDecimals(loadUnit.value.shown(set.loadKg))}
                unit={loadUnit.value.unit}
                size="large"
                why={
                  place === sets.length - 1
                    ? { title: 'The top set and its plates', sentences: ramp.answer.why.map(say) }
                    : undefined
                }
              />
              <span class="ramp-reps">{`× ${set.reps}`}</span>
            </div>
            <p>{words}</p>
            {set.perSide.length > 0 && (
              <PlateDrawing
                words={`${on.sides === 2 ? 'Each side' : 'The peg'}, inside first: ${set.perSide.map((kg) => stampWords(ramp.stampOf(kg))).join(', ')}`}
                plates={set.perSide.map((kg, i) => ({
                  stamp: ramp.stampOf(kg),
                  goesOn: i >= change.stays.length,
                }))}
              />
            )}
          </li>
        );
      })}
    </ol>
  );
}

function stampWords({ mass, unit }: Stamp): string {
  return `${mass} ${unit}`;
}

function changeWords(
  change: ReturnType<typeof plateChange>,
  sides: 1 | 2,
  stampOf: (kg: Kilograms) => Stamp,
): string {
  const list = (plates: readonly Kilograms[]): string =>
    plates.map((kg) => stampWords(stampOf(kg))).join(', ');
  const parts = [
    ...(change.off.length > 0 ? [`off ${list(change.off)}`] : []),
    ...(change.on.length > 0 ? [`on ${list(change.on)}`] : []),
  ];
  if (parts.length === 0) return change.stays.length === 0 ? 'Nothing on it.' : 'Nothing to change.';
  const sentence = `${parts.join('; ')}${sides === 2 ? ', each side' : ''}.`;
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
