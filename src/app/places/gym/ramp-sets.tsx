import type { JSX } from 'preact';
import { Figure } from '../../parts/figure.tsx';
import { loadDecimals, loadUnit } from '../../views/load-units.ts';
import { say } from '../../views/say.ts';
import { PlateDrawing } from './plate-drawing.tsx';
import { changeWords, sideWords } from './plate-words.ts';
import { plateChange, type Loadable, type StampedRamp } from './ramp-draft.ts';

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
                words={sideWords(set.perSide, on.sides, ramp.stampOf)}
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
