import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { roundTo } from '#core/units/rounding.ts';
import { ScaleButton } from '../../chooser/scale-button.tsx';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { recordAll } from '../../state/open-journal.ts';
import { massKg } from '../../views/athlete-view.ts';
import { massUnit } from '../../views/mass-units.ts';
import { weighDoubt, type WeighDoubt } from './weigh-in.ts';

type Circumstance = NonNullable<DataOf<'body-weighed'>['circumstances']>[number];
const CIRCUMSTANCES: readonly Circumstance[] = [
  'clothed',
  'after food',
  'travelling',
  'unwell',
  'other scale',
];

/** This morning's weight: it starts at the last one, so that a tap or two is enough. */
export function WeighInScreen(): JSX.Element {
  const { unit, shown, read, step } = massUnit.value;
  const last = massKg.value;
  const typed = useSignal<number | undefined>(last === undefined ? undefined : roundTo(shown(last), 1));
  const marked = useSignal<readonly Circumstance[]>([]);
  const fat = useSignal<number | undefined>(undefined);
  const doubt = typed.value === undefined ? undefined : weighDoubt(read(typed.value), last);
  const keep = (kg: number): Promise<void> =>
    keepWeight(kg, marked.value, fat.value, `${roundTo(shown(kg), 1)} ${unit}`);
  return (
    <Page title="Weigh in" back={pathTo('body')} busy>
      <Form
        onSubmit={() => {
          if (typed.value !== undefined && doubt === undefined) void keep(read(typed.value));
        }}
        problems={[]}
      >
        <StepperField
          label="On the scale"
          unit={unit}
          value={typed.value}
          step={step}
          min={20}
          max={800}
          decimals={1}
          onValue={(n) => (typed.value = n)}
        />
        <ScaleButton
          onReading={({ massKg: kg, bodyFatPercent }) => {
            if (kg !== undefined) typed.value = roundTo(shown(kg), 1);
            fat.value = bodyFatPercent;
          }}
        />
        {fat.value !== undefined && (
          <Note>{`The scale also says ${fat.value} % body fat by impedance; it is kept with the weight.`}</Note>
        )}
        {doubt && typed.value !== undefined && <Doubt doubt={doubt} typed={typed.value} onKeep={keep} />}
        <Unusual marked={marked.value} onMarked={(circumstances) => (marked.value = circumstances)} />
        <ActionBar>
          <Button
            kind="next"
            records
            wide
            submits
            disabled={typed.value === undefined || doubt !== undefined}
          >
            Keep this weight
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface UnusualProps {
  readonly marked: readonly Circumstance[];
  readonly onMarked: (marked: readonly Circumstance[]) => void;
}

function Unusual({ marked, onMarked }: UnusualProps): JSX.Element {
  return (
    <Section title="Anything unusual" detail="An odd morning counts less">
      {CIRCUMSTANCES.map((one) => (
        <CheckField
          key={one}
          label={one}
          checked={marked.includes(one)}
          onChecked={(on) => onMarked(on ? [...marked, one] : marked.filter((other) => other !== one))}
        />
      ))}
    </Section>
  );
}

/** The weight, with how the morning was, and what the scale itself said of body fat. */
async function keepWeight(
  kg: number,
  circumstances: readonly Circumstance[],
  percent: number | undefined,
  words: string,
): Promise<void> {
  const saved = await recordAll(
    [
      {
        kind: 'body-weighed',
        data: {
          massKg: roundTo(kg, 3),
          ...(circumstances.length > 0 && { circumstances: [...circumstances] }),
        },
      },
      ...(percent === undefined
        ? []
        : [{ kind: 'body-fat-measured' as const, data: { percent, method: 'impedance' as const } }]),
    ],
    { says: `Weighed in at ${words}` },
  );
  if (saved.status !== 'refused') go(pathTo('body'));
}

interface DoubtProps {
  readonly doubt: WeighDoubt;
  readonly typed: number;
  readonly onKeep: (massKg: number) => Promise<void>;
}

/** A weight that looks like a slip is asked about; whatever is answered is kept as answered. */
function Doubt({ doubt, typed, onKeep }: DoubtProps): JSX.Element {
  const { unit, shown, read } = massUnit.value;
  const asTyped = (
    <Button records onPress={() => void onKeep(read(typed))}>
      {`It is ${typed} ${unit}`}
    </Button>
  );
  if (doubt.kind === 'far off') {
    return (
      <>
        <Caution
          title="Far from the last weigh-in"
          words="More than any morning's water. Another scale, or a slip of the finger?"
        />
        <div class="row">{asTyped}</div>
      </>
    );
  }
  const meant = roundTo(shown(doubt.meantKg), 1);
  return (
    <>
      <Caution
        title="Which unit was that?"
        words={`Read in the other unit it would be ${meant} ${unit}, close to the last weigh-in.`}
      />
      <div class="row">
        <Button records onPress={() => void onKeep(doubt.meantKg)}>
          {`I meant ${meant} ${unit}`}
        </Button>
        {asTyped}
      </div>
    </>
  );
}
