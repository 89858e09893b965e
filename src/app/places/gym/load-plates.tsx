import type { JSX } from 'preact';
import type { WalkedStep } from '#core/gym/session/session-walk.ts';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { Note } from '../../parts/note.tsx';
import { implementsAtHand, machines } from '../../views/gym-view.ts';
import { book } from '../../views/training-view.ts';
import { PlateDrawing } from './plate-drawing.tsx';
import { changeWords, offWords, sideWords } from './plate-words.ts';
import { barOf } from './set-draft.ts';
import { loadables, plateChange, rampOn, stampKg, type Loadable, type StampedRamp } from './ramp-draft.ts';

type Plates = DataOf<'weights-counted'>['plates'];

interface LoadPlatesProps {
  readonly step: WalkedStep;
  readonly load: SetLoad;
  /** What the set before was loaded with, to say what the hands do. */
  readonly before: SetLoad | undefined;
  readonly place: string | undefined;
}

/** The plates of a set, drawn as they are loaded; nothing where neither bar nor pegs or no plates are known. */
export function LoadPlates({ step, load, before, place }: LoadPlatesProps): JSX.Element | null {
  const plates = book.value.weights(place)?.plates ?? [];
  if (plates.length === 0) return null;
  if (load.of === 'kg') {
    const bar = barOf(step, implementsAtHand.value);
    const [on] = bar ? loadables([bar], []) : [];
    if (!on) return null;
    return (
      <Side on={on} plates={plates} kg={load.kg} beforeKg={before?.of === 'kg' ? before.kg : undefined} />
    );
  }
  if (load.of !== 'pegs') return null;
  const machine = loadables([], machines.value).find(({ id }) => id === load.machine);
  return (
    <>
      {load.pegs
        .filter(({ kg }) => kg > 0)
        .map(({ peg, kg }) => (
          <Side
            key={peg}
            name={peg}
            on={{ id: peg, name: peg, emptyKg: 0, sides: machine?.sides ?? 1 }}
            plates={plates}
            kg={kg}
            beforeKg={before?.of === 'pegs' ? before.pegs.find((other) => other.peg === peg)?.kg : undefined}
          />
        ))}
    </>
  );
}

interface SideProps {
  readonly name?: string;
  readonly on: Loadable;
  readonly plates: Plates;
  readonly kg: number;
  readonly beforeKg: number | undefined;
}

function Side({ name, on, plates, kg, beforeKg }: SideProps): JSX.Element | null {
  const now = loaded(on, plates, kg);
  if (!now) return null;
  const top = now.answer.sets.at(-1);
  if (!top) return null;
  const before = beforeKg === undefined ? undefined : loaded(on, plates, beforeKg);
  const change = plateChange(before?.answer.sets.at(-1)?.perSide ?? [], top.perSide);
  const off = offWords(on, kg, now);
  return (
    <div class="stack-close">
      <p>
        {name === undefined ? '' : `Peg "${name}": `}
        {changeWords(change, on.sides, now.stampOf)}
      </p>
      {top.perSide.length > 0 && (
        <PlateDrawing
          words={sideWords(top.perSide, on.sides, now.stampOf)}
          plates={top.perSide.map((plate, i) => ({
            stamp: now.stampOf(plate),
            goesOn: i >= change.stays.length,
          }))}
        />
      )}
      {off !== undefined && <Note>{off}</Note>}
    </div>
  );
}

function loaded(on: Loadable, plates: Plates, kg: number): StampedRamp | undefined {
  const lightest = Math.min(...plates.map(stampKg));
  if (kg < on.emptyKg || kg < Math.min(lightest, 0.5)) return undefined;
  const read = rampOn(on, plates, { topKg: kg, reps: 1, warmUps: 0 });
  return read.ok ? read.value : undefined;
}
