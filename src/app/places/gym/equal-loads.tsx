import type { JSX } from 'preact';
import { equalOnPeg, type LeverMachine, type PegLoad } from '#core/gym/machines/peg-loadings.ts';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { Table } from '../../parts/table.tsx';
import { loadUnit } from '../../views/load-units.ts';

/** What a single peg would have to carry to ask the same work, or the same peak, as the loading shown. */
export function EqualLoads({
  machine,
  pegs,
}: {
  readonly machine: LeverMachine;
  readonly pegs: readonly PegLoad[];
}): JSX.Element {
  const { unit, shown } = loadUnit.value;
  const written = (kg: number | undefined): string => (kg === undefined ? 'none does' : shown(kg).toFixed(1));
  return (
    <Section title="The same on one peg">
      <Table
        caption="Equal loads on one peg alone"
        captionHidden
        columns={[
          { key: 'peg', label: 'Peg' },
          { key: 'work', label: 'Equal work', unit, numeric: true },
          { key: 'peak', label: 'Equal peak', unit, numeric: true },
        ]}
        rows={machine.pegs.map(({ name }) => {
          const equal = equalOnPeg(machine, pegs, name);
          return { peg: name, work: written(equal?.equalWorkKg), peak: written(equal?.equalPeakKg) };
        })}
      />
      <Note>
        Equal work: the movement costs the same from end to end. Equal peak: its hardest point is as hard.
        Sets on other pegs are compared by work.
      </Note>
    </Section>
  );
}
