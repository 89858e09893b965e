import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { refuseDose } from '#core/health/supplements/refuse-dose.ts';
import type { Product } from '#core/health/supplements/read-label.ts';
import { regimensIn } from '#core/health/supplements/regimens.ts';
import type { Problem } from '#core/problems/problem.ts';
import { addDays } from '#core/units/civil-date.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { ClockField } from '../../parts/clock-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Form } from '../../parts/form.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { health } from '../../views/health-view.ts';
import { problemAt } from '../../views/problem-at.ts';
import { sourceWords } from '../../views/source-words.ts';
import { newId } from '../../views/new-id.ts';
import {
  CADENCES,
  draftOfRegimen,
  emptyRegimen,
  readRegimenDraft,
  regimenDraft,
  TIES,
  type RegimenDraft,
} from './regimen-draft.ts';
import { WEEKDAYS } from './regimen-words.ts';

const problems = signal<readonly Problem[]>([]);

/** When a product is taken: tied to what happens, so that a day planned anew moves it too. */
export function RegimenForm({
  supplement,
  regimen,
}: {
  readonly supplement: string;
  readonly regimen: string | undefined;
}): JSX.Element {
  const back = pathTo('health', 'product', supplement);
  const product = health.value.products.find((one) => one.product.supplement === supplement)?.product;
  if (!product)
    return (
      <Page title="When it is taken" back={pathTo('health', 'supplements')}>
        <EmptyState title="This product is not in the cupboard." words="Describe it by its label first." />
      </Page>
    );
  const known = regimensIn(ledger.value).find((one) => one.regimen === regimen);
  const key = `health/regimen/${supplement}/${regimen ?? 'new'}`;
  const typed = draft(key, regimenDraft, known ? draftOfRegimen(known) : emptyRegimen(today.value));
  const of = { regimen: known?.regimen ?? '', supplement, pauses: known?.pauses };
  const props: FieldsProps = {
    product,
    typed: typed.value,
    change: (part) => (typed.value = { ...typed.value, ...part }),
  };
  const end = async (): Promise<void> => {
    if (!known) return;
    const saved = await record(
      'regimen-set',
      { ...known, until: addDays(today.value, -1) },
      { says: `${product.name}: ended` },
    );
    problems.value = saved.status === 'refused' ? [saved.problem] : [];
    if (saved.status !== 'refused') go(back);
  };
  return (
    <Page title={`When: ${product.name}`} back={back}>
      <Form onSubmit={() => void keep(typed.value, key, of)} problems={problems.value}>
        <Columns wide="even">
          <Section title="How much, and with what">
            <Dose {...props} />
          </Section>
          <Section title="On which days">
            <Days {...props} />
          </Section>
        </Columns>
        {known && (
          <Button kind="quiet" records onPress={() => void end()}>
            End it: the last day was yesterday
          </Button>
        )}
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface FieldsProps {
  readonly product: Product;
  readonly typed: RegimenDraft;
  readonly change: (part: Partial<RegimenDraft>) => void;
}

function Dose({ product, typed, change }: FieldsProps): JSX.Element {
  const refusal = typed.units === undefined ? undefined : refuseDose(product, typed.units);
  return (
    <div class="stack">
      <NumberField
        label="Taken at once"
        unit={product.unit}
        decimals={1}
        value={typed.units}
        onValue={(units) => change({ units })}
        problem={problemAt(problems.value, 'units')}
      />
      {refusal && (
        <Caution title="Will not be planned" words={refusal.words} source={sourceWords(refusal.source)} />
      )}
      <ChoiceField
        label="Tied to"
        layout="column"
        value={typed.tie}
        options={TIES}
        onValue={(tie) => change({ tie })}
      />
      {(typed.tie === 'before training' || typed.tie === 'before sleep') && (
        <NumberField
          label="So long before"
          unit="min"
          min={0}
          max={600}
          value={typed.minutes}
          onValue={(minutes) => change({ minutes })}
          problem={problemAt(problems.value, 'minutes')}
        />
      )}
      {typed.tie === 'clock' && (
        <ClockField
          label="Clock time"
          value={typed.atMinutes}
          onValue={(atMinutes) => change({ atMinutes })}
          problem={problemAt(problems.value, 'atMinutes')}
        />
      )}
    </div>
  );
}

function Days({ typed, change }: FieldsProps): JSX.Element {
  const toggle = (weekday: number, on: boolean): void =>
    change({
      weekdays: on ? [...typed.weekdays, weekday] : typed.weekdays.filter((other) => other !== weekday),
    });
  return (
    <div class="stack">
      <ChoiceField
        label="Rhythm"
        layout="column"
        value={typed.cadence}
        options={CADENCES}
        onValue={(cadence) => change({ cadence })}
        problem={problemAt(problems.value, 'weekdays')}
      />
      {typed.cadence === 'every n-th day' && (
        <NumberField
          label="Every so many days"
          unit="days"
          min={2}
          max={60}
          value={typed.days}
          onValue={(days) => change({ days })}
          problem={problemAt(problems.value, 'days')}
        />
      )}
      {typed.cadence === 'weekdays' && (
        <div class="row">
          {WEEKDAYS.map((name, place) => (
            <CheckField
              key={name}
              label={name}
              checked={typed.weekdays.includes(place + 1)}
              onChecked={(on) => toggle(place + 1, on)}
            />
          ))}
        </div>
      )}
      <DateField label="First day" value={typed.from} onValue={(from) => change({ from })} />
      <DateField
        label="Last day"
        value={typed.until}
        onValue={(until) => change({ until })}
        problem={problemAt(problems.value, 'until')}
        optional
      />
    </div>
  );
}

async function keep(
  typed: RegimenDraft,
  key: string,
  of: Parameters<typeof readRegimenDraft>[1],
): Promise<void> {
  const reading = readRegimenDraft(typed, { ...of, regimen: of.regimen || newId('regimen') });
  problems.value = reading.ok ? [] : [reading.problem];
  if (!reading.ok) return;
  const saved = await record('regimen-set', reading.value, { says: 'The run sheet knows when' });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(pathTo('health', 'product', of.supplement));
}
