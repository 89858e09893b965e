import { signal, useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { findSubstance } from '#core/health/supplements/find-substance.ts';
import type { Problem } from '#core/problems/problem.ts';
import { standardNames } from '#core/health/supplements/standard-names.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { Form } from '../../parts/form.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { SearchField } from '../../parts/search-field.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { newId } from '../../views/new-id.ts';
import { health } from '../../views/health-view.ts';
import { problemAt } from '../../views/problem-at.ts';
import {
  AMOUNT_UNITS,
  draftOfProduct,
  emptyProduct,
  productDraft,
  readProductDraft,
  standsFor,
  UNITS,
  type LineDraft,
  type ProductDraft,
} from './product-draft.ts';
import './product-form.css';

const problems = signal<readonly Problem[]>([]);

interface FieldsProps {
  readonly typed: ProductDraft;
  readonly change: (part: Partial<ProductDraft>) => void;
}

/** A product of one's own by its label; with an id it is one that is being corrected. */
export function ProductForm({ supplement }: { readonly supplement: string | undefined }): JSX.Element {
  const known = health.value.products.find(({ product }) => product.supplement === supplement)?.product;
  const key = `health/product/${supplement ?? 'new'}`;
  const typed = draft(key, productDraft, known ? draftOfProduct(known) : emptyProduct);
  const props: FieldsProps = {
    typed: typed.value,
    change: (part) => (typed.value = { ...typed.value, ...part }),
  };
  return (
    <Page
      title={known ? `Label of ${known.name}` : 'A product by its label'}
      back={known ? pathTo('health', 'product', known.supplement) : pathTo('health', 'supplements')}
    >
      <Form onSubmit={() => void keep(typed.value, key, known?.supplement)} problems={problems.value}>
        <Columns wide="even">
          <Section title="What it is">
            <Identity {...props} />
          </Section>
          <Section title="As printed">
            <Contents {...props} />
          </Section>
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this product
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

function Identity({ typed, change }: FieldsProps): JSX.Element {
  return (
    <div class="stack">
      <TextField
        label="Name"
        value={typed.name}
        onValue={(name) => change({ name })}
        problem={problemAt(problems.value, 'name')}
      />
      <ChoiceField
        label="Comes as"
        layout="row"
        value={typed.unit}
        options={UNITS.map((value) => ({ value, label: value }))}
        onValue={(unit) => change({ unit })}
      />
      <NumberField
        label="The printed amounts are for"
        unit={typed.unit}
        decimals={1}
        value={typed.perUnits}
        onValue={(perUnits) => change({ perUnits })}
        problem={problemAt(problems.value, 'perUnits')}
        hint="how many make the serving that the label speaks of"
      />
      <NumberField
        label="A full pack holds"
        unit={typed.unit}
        min={1}
        value={typed.packUnits}
        onValue={(packUnits) => change({ packUnits })}
        optional
      />
      <CheckField
        label="This batch was tested"
        detail="you looked its number up with whoever tested it for prohibited substances"
        checked={typed.batchTested}
        onChecked={(batchTested) => change({ batchTested })}
      />
    </div>
  );
}

const SHOWN = 8;

function Contents({ typed, change }: FieldsProps): JSX.Element {
  const query = useSignal('');
  const set = (place: number, part: Partial<LineDraft>): void =>
    change({ lines: typed.lines.map((line, at) => (at === place ? { ...line, ...part } : line)) });
  const add = (of: string): void => {
    change({ lines: [...typed.lines, { of, form: '', unit: 'mg' }] });
    query.value = '';
  };
  const wanted = query.value.trim();
  const found = wanted === '' ? [] : standardNames(wanted, SHOWN);
  const own = wanted !== '' && findSubstance(wanted).kind === 'unknown';
  return (
    <div class="stack">
      {typed.lines.map((line, place) => (
        <Line
          key={place}
          line={line}
          problem={problemAt(problems.value, `lines.${place}.amount`)}
          set={(part) => set(place, part)}
          drop={() => change({ lines: typed.lines.filter((_, at) => at !== place) })}
        />
      ))}
      <SearchField
        label="It holds"
        hint="a vitamin, mineral or substance as the label prints it"
        query={query.value}
        onQuery={(text) => (query.value = text)}
        results={[
          ...found.map((name) => ({ id: name, title: name, detail: standsFor(name) })),
          ...(own
            ? [
                {
                  id: wanted,
                  title: `"${wanted}", as printed`,
                  detail: 'not in the tables: shown, not summed',
                },
              ]
            : []),
        ]}
        onChoose={add}
        problem={problemAt(problems.value, 'lines')}
      />
    </div>
  );
}

interface LineProps {
  readonly line: LineDraft;
  readonly problem: string | undefined;
  readonly set: (part: Partial<LineDraft>) => void;
  readonly drop: () => void;
}

const UNIT_WORDS = { mg: 'mg', ug: 'µg', g: 'g', '[IU]': 'IU', 'not said': 'not said' } as const;

function Line({ line, problem, set, drop }: LineProps): JSX.Element {
  const found = findSubstance(line.of);
  const never = found.kind === 'substance' && found.substance.stand !== 'planned';
  return (
    <fieldset class="label-line">
      <legend>{line.of}</legend>
      <p class="soft">{standsFor(line.of)}</p>
      {never && (
        <Caution
          title="No dose of it is planned"
          words="It may stand in your cupboard and is shown with its reason; the run sheet will never name a time for it."
        />
      )}
      {line.unit !== 'not said' && (
        <NumberField
          label={`Amount of ${line.of}`}
          unit={UNIT_WORDS[line.unit]}
          decimals={3}
          min={0}
          value={line.amount}
          onValue={(amount) => set({ amount })}
          problem={problem}
        />
      )}
      <ChoiceField
        label={`Unit of ${line.of}`}
        layout="row"
        value={line.unit}
        options={AMOUNT_UNITS.map((value) => ({ value, label: UNIT_WORDS[value] }))}
        onValue={(unit) => set({ unit })}
      />
      <TextField
        label={`Form of ${line.of}`}
        hint="where the label says it: retinol, folic acid, nicotinamide"
        value={line.form}
        onValue={(form) => set({ form })}
        optional
      />
      <Button kind="quiet" onPress={drop} label={`Take ${line.of} off`}>
        {`Take ${line.of} off`}
      </Button>
    </fieldset>
  );
}

async function keep(typed: ProductDraft, key: string, supplement: string | undefined): Promise<void> {
  const id = supplement ?? newId('supplement');
  const reading = readProductDraft(typed, id);
  problems.value = reading.ok ? [] : [reading.problem];
  if (!reading.ok) return;
  const saved = await record('supplement-defined', reading.value, { says: `${reading.value.name} kept` });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(supplement === undefined ? pathTo('health', 'regimen', id, 'new') : pathTo('health', 'product', id));
}
