import type { JSX } from 'preact';
import { torque } from '#core/gym/machines/torque.ts';
import type { LeverMachine, PegLoad } from '#core/gym/machines/peg-loadings.ts';
import { CurveChart } from '../../charts/curve-chart.tsx';
import { Note } from '../../parts/note.tsx';
import { EMPHASIS } from './machine-words.ts';

/** About so many points are drawn. */
const POINTS = 30;

/** What a loading asks over the movement, beside the empty lever. */
export function ResistanceChart({
  machine,
  pegs,
}: {
  readonly machine: LeverMachine;
  readonly pegs: readonly PegLoad[];
}): JSX.Element {
  const asked = torqueOf(machine, pegs);
  if (!asked.ok) return <Note>{`${asked.problem.message} ${asked.problem.remedy}`}</Note>;
  const { curve, peak, passesOver, emphasis } = asked.value;
  const empty = torqueOf(machine, []);
  return (
    <CurveChart
      title="Resistance over the movement"
      sentence={`Hardest at ${Math.round(peak.deg)}° with ${Math.round(peak.torqueNm)} N m; ${EMPHASIS[emphasis]}.`}
      x={{ label: 'angle', unit: '°' }}
      y={{ label: 'torque', unit: 'N m' }}
      lines={[
        {
          name: 'as loaded',
          look: 'solid',
          points: curve.map(({ deg, torqueNm }) => ({ x: deg, y: torqueNm })),
        },
        ...(empty.ok && pegs.length > 0
          ? [
              {
                name: 'lever alone',
                look: 'dotted' as const,
                points: empty.value.curve.map(({ deg, torqueNm }) => ({ x: deg, y: torqueNm })),
              },
            ]
          : []),
      ]}
      marks={[
        { x: peak.deg, words: 'hardest' },
        ...(passesOver === undefined ? [] : [{ x: passesOver, words: 'over the top' }]),
      ]}
      levels={passesOver === undefined ? [] : [{ value: 0, words: 'no resistance' }]}
    />
  );
}

/** What a loading asks over the whole movement. */
export function torqueOf(machine: LeverMachine, pegs: readonly PegLoad[]) {
  const { range, lever, padM } = machine;
  return torque({
    range: { ...range, stepDeg: (range.toDeg - range.fromDeg) / POINTS },
    lever,
    padM,
    pegs: machine.pegs.map((peg) => ({
      ...peg,
      massKg: pegs.find((other) => other.peg === peg.name)?.kg ?? 0,
    })),
  });
}
