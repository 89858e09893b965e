import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import {
  figuresOf,
  pegsByEmphasis,
  type LeverMachine,
  type PegLoad,
} from '#core/gym/machines/peg-loadings.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Facts } from '../../parts/facts.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { WhyButton } from '../../parts/why-button.tsx';
import type { Why } from '../../parts/why.ts';
import { go, pathTo } from '../../shell/route.ts';
import { record } from '../../state/open-journal.ts';
import { machines, type Machine } from '../../views/gym-view.ts';
import { loadUnit } from '../../views/load-units.ts';
import { EqualLoads } from './equal-loads.tsx';
import { KeptPhoto } from './kept-photo.tsx';
import { EMPHASIS, geometryWords } from './machine-words.ts';
import { MachineDrawing } from './machine-drawing.tsx';
import { ResistanceChart, torqueOf } from './resistance-chart.tsx';

/** A machine: what a loading of its pegs asks over the movement, and what asks the same on another peg. */
export function MachineScreen({ id }: { readonly id: string }): JSX.Element {
  const machine = machines.value.find((one) => one.machine === id);
  if (!machine) {
    return (
      <Page title="Machine" back={pathTo('gym', 'machines')}>
        <EmptyState title="This machine is not described" words="Choose one from the list, or describe it." />
      </Page>
    );
  }
  const { geometry } = machine;
  return (
    <Page title={machine.name} detail={geometryWords(geometry)} back={pathTo('gym', 'machines')}>
      {geometry.of === 'lever' ? (
        <Lever machine={geometry} />
      ) : (
        <Section title="How its sets compare">
          <Note>{COMPARES[geometry.of]}</Note>
        </Section>
      )}
      <Section title="The description">
        {machine.photo !== undefined && <KeptPhoto photo={machine.photo} words={machine.name} />}
        <div class="row">
          <Button href={pathTo('gym', 'describe', id)}>Describe it anew</Button>
          <Button kind="quiet" records onPress={() => void putAway(machine)}>
            Put away
          </Button>
        </div>
      </Section>
    </Page>
  );
}

const COMPARES: Readonly<Record<Exclude<Machine['geometry']['of'], 'lever'>, string>> = {
  sled: 'Sled and plates together, by their share along the rails: sets on this machine compare whatever lies on it.',
  stack:
    'By the pin and what is laid on top. Another machine’s stack is another measure: cams and pulleys differ.',
  unknown:
    'Its pegs are not measured, so a set compares only with sets whose plates were divided over the pegs in the same way. Measure it once with a tape and the phone’s level, and all of them compare.',
};

async function putAway(machine: Machine): Promise<void> {
  const saved = await record(
    'machine-described',
    { ...machine, retired: true },
    { says: `${machine.name} is put away` },
  );
  if (saved.status !== 'refused') go(pathTo('gym', 'machines'));
}

const FIRST_KG = 20;

function Lever({ machine }: { readonly machine: LeverMachine }): JSX.Element {
  const pegs = useSignal<readonly PegLoad[]>(
    machine.pegs.map(({ name }, i) => ({ peg: name, kg: i === 0 ? FIRST_KG : 0 })),
  );
  const loaded = pegs.value.filter(({ kg }) => kg > 0);
  const { unit, shown, read, step } = loadUnit.value;
  return (
    <>
      <Columns wide="last">
        <Section title="Loaded" detail={machine.sides === 2 ? 'both sides together' : undefined}>
          <div class="stack">
            {pegs.value.map(({ peg, kg }) => (
              <StepperField
                key={peg}
                label={`Peg "${peg}"`}
                unit={unit}
                decimals={2}
                step={step}
                min={0}
                max={shown(800)}
                value={shown(kg)}
                onValue={(typed = 0) =>
                  (pegs.value = pegs.value.map((other) =>
                    other.peg === peg ? { peg, kg: read(typed) } : other,
                  ))
                }
              />
            ))}
          </div>
          <MachineDrawing machine={machine} pegs={loaded} />
        </Section>
        <Section title="What it asks">
          <ResistanceChart machine={machine} pegs={loaded} />
          <Asks machine={machine} pegs={loaded} />
        </Section>
      </Columns>
      <Columns wide="even">
        <EqualLoads machine={machine} pegs={loaded} />
        <WhichPeg machine={machine} pegs={loaded} />
      </Columns>
    </>
  );
}

interface LoadingProps {
  readonly machine: LeverMachine;
  readonly pegs: readonly PegLoad[];
}

function Asks({ machine, pegs }: LoadingProps): JSX.Element | null {
  const figures = figuresOf(machine, pegs);
  if (!figures) return null;
  const { unit, shown } = loadUnit.value;
  const [start, middle, end] = figures.thirdsPercent.map(Math.round);
  return (
    <>
      {figures.passesOverDeg !== undefined && (
        <Caution
          title="It passes over the top"
          words={`From ${Math.round(figures.passesOverDeg)}° on the load pulls toward the end instead of resisting: stop before it, or hold it back.`}
        />
      )}
      <Facts
        items={[
          { name: 'Hardest', value: `${Math.round(figures.peakNm)} N m at ${Math.round(figures.peakDeg)}°` },
          {
            name: 'At the pad, on average',
            value: `as ${Math.round(shown(figures.padKg) * 10) / 10} ${unit} held`,
          },
          { name: 'Work in start, middle, end', value: `${start}, ${middle}, ${end} %` },
          { name: 'So', value: EMPHASIS[figures.emphasis] },
        ]}
      />
      <div class="row">
        <WhyButton why={() => whyAsks(machine, pegs)}>How is this worked out?</WhyButton>
      </div>
    </>
  );
}

function whyAsks(machine: LeverMachine, pegs: readonly PegLoad[]): Why {
  const asked = torqueOf(machine, pegs);
  return {
    title: 'What the machine asks',
    sentences: [
      ...(asked.ok ? asked.value.why : [asked.problem.message]),
      'At the pad: the torque averaged over the movement, over the distance of the pad, as a mass held against gravity.',
    ],
    formula: 'torque = 9.80665 × sum of mass × distance × cos(angle of the lever + angle of the peg)',
    inputs: pegs.map(({ peg, kg }) => ({ name: `Peg ${peg}`, value: `${kg} kg`, from: 'as set above' })),
    source: 'mechanics; standard gravity of the third General Conference on Weights and Measures, 1901',
    uncertainty:
      'For slow repetitions: speed adds inertia. A distance measured 1 cm wrong moves the figures by that share of it.',
  };
}

/** Where the same plates would move the work to. */
function WhichPeg({ machine, pegs }: LoadingProps): JSX.Element | null {
  const total = pegs.reduce((sum, { kg }) => sum + kg, 0);
  const by = total > 0 ? pegsByEmphasis(machine, total) : undefined;
  if (!by) return null;
  const share = (part: 'start' | 'middle' | 'end', third: 0 | 1 | 2): string =>
    `all on "${by[part].peg}": ${Math.round(by[part].figures.thirdsPercent[third])} % of the work`;
  const { unit, shown } = loadUnit.value;
  return (
    <Section title="To move the work" detail={`${shown(total)} ${unit}, the same plates`}>
      <Facts
        items={[
          { name: 'To the start', value: share('start', 0) },
          { name: 'To the middle', value: share('middle', 1) },
          { name: 'To the end', value: share('end', 2) },
        ]}
      />
      <Note>Plates divided over two pegs lie between.</Note>
    </Section>
  );
}
