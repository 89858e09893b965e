import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { Form } from '../../parts/form.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { problemAt } from '../../views/problem-at.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { LabelRanges } from './label-ranges.tsx';
import { emptyLabel, labelDraft, readLabelDraft, type LabelDraft } from './label-draft.ts';
import { newId } from '../../views/new-id.ts';

const DRAFT = 'kitchen/label';
const problems = signal<readonly Problem[]>([]);

/** A food of one's own from its label: what rounding allows is carried, and a label that does not add up is said. */
export function LabelScreen(): JSX.Element {
  const typed = draft(DRAFT, labelDraft, emptyLabel);
  const props: LabelFieldsProps = {
    typed: typed.value,
    change: (part) => {
      typed.value = { ...typed.value, ...part };
    },
  };
  return (
    <Page title="A food from its label" back={pathTo('kitchen', 'foods')}>
      <Form onSubmit={() => void keep(typed.value)} problems={problems.value}>
        <Columns wide="even">
          <Section title="What it is">
            <IdentityFields {...props} />
          </Section>
          <Section title="As printed">
            <PrintedFields {...props} />
            <LabelReading typed={typed.value} />
          </Section>
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this food
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface LabelFieldsProps {
  readonly typed: LabelDraft;
  readonly change: (part: Partial<LabelDraft>) => void;
}

function IdentityFields({ typed, change }: LabelFieldsProps): JSX.Element {
  return (
    <div class="stack">
      <TextField
        label="Name"
        value={typed.name}
        onValue={(name) => change({ name })}
        problem={problemAt(problems.value, 'name')}
      />
      <ChoiceField
        label="State"
        layout="row"
        value={typed.state}
        options={[
          { value: 'as-is', label: 'ready' },
          { value: 'raw', label: 'raw' },
          { value: 'dry', label: 'dry' },
          { value: 'cooked', label: 'cooked' },
          { value: 'frozen', label: 'frozen' },
        ]}
        onValue={(state) => change({ state })}
      />
      <TextField
        label="Comes in whole"
        hint="slice, scoop, pot; empty when it is weighed freely"
        value={typed.unitName}
        onValue={(unitName) => change({ unitName })}
        optional
      />
      <NumberField
        label="One of them weighs"
        unit="g"
        decimals={1}
        min={0.1}
        value={typed.unitG}
        onValue={(unitG) => change({ unitG })}
        optional
      />
    </div>
  );
}

const PRINTED = [
  { key: 'energyKcal', label: 'Energy', unit: 'kcal', optional: false },
  { key: 'fatG', label: 'Fat', unit: 'g', optional: false },
  { key: 'saturatedFatG', label: 'Saturated fat', unit: 'g', optional: true },
  { key: 'carbohydrateG', label: 'Carbohydrate', unit: 'g', optional: false },
  { key: 'sugarsG', label: 'Sugars', unit: 'g', optional: true },
  { key: 'fibreG', label: 'Fibre', unit: 'g', optional: true },
  { key: 'proteinG', label: 'Protein', unit: 'g', optional: false },
] as const;

function PrintedFields({ typed, change }: LabelFieldsProps): JSX.Element {
  return (
    <div class="stack">
      <ChoiceField
        label="Which rules"
        layout="column"
        value={typed.rules}
        options={[
          { value: 'eu', label: 'European', detail: 'per 100 g; carbohydrate without fibre; salt' },
          { value: 'us', label: 'United States', detail: 'per serving; carbohydrate with fibre; sodium' },
        ]}
        onValue={(rules) => change({ rules })}
      />
      <NumberField
        label="Figures are for"
        unit="g"
        decimals={1}
        min={0.1}
        value={typed.servingG}
        onValue={(servingG) => change({ servingG })}
        problem={problemAt(problems.value, 'servingG')}
      />
      {PRINTED.map(({ key, label, unit, optional }) => (
        <NumberField
          key={key}
          label={label}
          unit={unit}
          decimals={1}
          min={0}
          value={typed[key]}
          onValue={(n) => change({ [key]: n })}
          problem={problemAt(problems.value, key)}
          optional={optional}
        />
      ))}
      {typed.rules === 'eu' ? (
        <NumberField
          label="Salt"
          unit="g"
          decimals={2}
          min={0}
          value={typed.saltG}
          onValue={(saltG) => change({ saltG })}
          optional
        />
      ) : (
        <NumberField
          label="Sodium"
          unit="mg"
          decimals={0}
          min={0}
          value={typed.sodiumMg}
          onValue={(sodiumMg) => change({ sodiumMg })}
          optional
        />
      )}
    </div>
  );
}

/** What rounding allows and whether the label adds up, as soon as there is enough of it. */
function LabelReading({ typed }: { readonly typed: LabelDraft }): JSX.Element | null {
  const outcome = readLabelDraft({ ...typed, name: typed.name || 'food' }, 'preview');
  if (!outcome.ok) {
    return typed.energyKcal === undefined || typed.proteinG === undefined ? null : (
      <Caution title={outcome.problem.message} words={outcome.problem.remedy} />
    );
  }
  const { reading, why, data } = outcome.value;
  return data.label ? <LabelRanges label={data.label} reading={reading} why={why} /> : null;
}

async function keep(typed: LabelDraft): Promise<void> {
  const reading = readLabelDraft(typed, newId('food'));
  problems.value = reading.ok ? [] : [reading.problem];
  if (!reading.ok) return;
  const saved = await record('food-defined', reading.value.data, {
    says: `${reading.value.data.name} is among your foods`,
  });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(DRAFT);
  go(pathTo('kitchen', 'food', reading.value.data.food));
}
