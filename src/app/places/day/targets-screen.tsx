import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import type { DaySheet } from '#core/cycle/day-sheet.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Form } from '../../parts/form.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { sheet } from '../../views/day-view.ts';
import { planNow } from '../../views/planner.ts';
import { targetEnergyKcal } from './target-cautions.ts';
import { TargetsTooLow } from './targets-too-low.tsx';

const DRAFT = 'day/targets';
const problems = signal<readonly Problem[]>([]);

const targetsDraft = v.strictObject({
  holds: v.picklist(['today', 'training', 'rest', 'every']),
  proteinG: v.optional(v.number()),
  carbohydrateG: v.optional(v.number()),
  fatG: v.optional(v.number()),
  fibreMinG: v.optional(v.number()),
  sodiumMaxMg: v.optional(v.number()),
});
type TargetsDraft = v.InferOutput<typeof targetsDraft>;

function draftOf({ targets }: DaySheet): TargetsDraft {
  return {
    holds: targets ? 'today' : 'every',
    proteinG: targets?.data.proteinG,
    carbohydrateG: targets?.data.carbohydrateG,
    fatG: targets?.data.fatG,
    fibreMinG: targets?.data.fibreMinG,
    sodiumMaxMg: targets?.data.sodiumMaxMg,
  };
}

/** The day's protein, carbohydrate and fat, entered by hand; the course sets them the same way. */
export function TargetsScreen(): JSX.Element {
  const typed = draft(DRAFT, targetsDraft, draftOf(sheet.value));
  const change = (part: Partial<TargetsDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  const { proteinG, carbohydrateG, fatG } = typed.value;
  const energyKcal = targetEnergyKcal({
    proteinG: proteinG ?? 0,
    carbohydrateG: carbohydrateG ?? 0,
    fatG: fatG ?? 0,
  });
  return (
    <Page title="Targets" back={pathTo('day')}>
      <Form onSubmit={() => void keep(typed.value)} problems={problems.value}>
        <Section title="Per day">
          <TargetFields typed={typed.value} change={change} />
          <Figure
            value={energyKcal}
            unit="kcal"
            label="Energy of these targets"
            why={{
              title: 'Energy of the targets',
              sentences: [
                'Counted with the general factors. Foods themselves carry their own factors, so eaten energy differs by a few percent.',
              ],
              formula: '4 × protein + 4 × carbohydrate + 9 × fat',
            }}
          />
          {proteinG !== undefined && carbohydrateG !== undefined && fatG !== undefined && (
            <TargetsTooLow targets={{ proteinG, carbohydrateG, fatG }} />
          )}
        </Section>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep these targets
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface FieldsProps {
  readonly typed: TargetsDraft;
  readonly change: (part: Partial<TargetsDraft>) => void;
}

function TargetFields({ typed, change }: FieldsProps): JSX.Element {
  return (
    <div class="stack">
      <ChoiceField
        label="These hold"
        value={typed.holds}
        layout="row"
        options={[
          { value: 'today', label: 'today only' },
          { value: 'training', label: 'training days' },
          { value: 'rest', label: 'rest days' },
          { value: 'every', label: 'every day' },
        ]}
        onValue={(holds) => change({ holds })}
      />
      <NumberField
        label="Protein"
        unit="g"
        decimals={0}
        min={0}
        max={1000}
        value={typed.proteinG}
        onValue={(proteinG) => change({ proteinG })}
      />
      <NumberField
        label="Carbohydrate"
        unit="g"
        decimals={0}
        min={0}
        max={2000}
        value={typed.carbohydrateG}
        onValue={(carbohydrateG) => change({ carbohydrateG })}
      />
      <NumberField
        label="Fat"
        unit="g"
        decimals={0}
        min={0}
        max={600}
        value={typed.fatG}
        onValue={(fatG) => change({ fatG })}
      />
      <NumberField
        label="Fibre, at least"
        unit="g"
        decimals={0}
        min={0}
        max={200}
        value={typed.fibreMinG}
        onValue={(fibreMinG) => change({ fibreMinG })}
        optional
      />
      <NumberField
        label="Sodium, at most"
        unit="mg"
        decimals={0}
        min={0}
        max={30000}
        value={typed.sodiumMaxMg}
        onValue={(sodiumMaxMg) => change({ sodiumMaxMg })}
        optional
      />
    </div>
  );
}

async function keep(typed: TargetsDraft): Promise<void> {
  const { proteinG, carbohydrateG, fatG } = typed;
  if (proteinG === undefined || carbohydrateG === undefined || fatG === undefined) {
    problems.value = [
      {
        code: 'day/targets',
        path: 'proteinG',
        message: 'Protein, carbohydrate or fat has no figure.',
        remedy: 'Enter all three; 0 is a figure too.',
      },
    ];
    return;
  }
  const hadPlan = sheet.value.plan !== undefined;
  const saved = await record(
    'target-set',
    {
      from: today.value,
      ...(typed.holds === 'today' && { until: today.value }),
      dayKind: typed.holds === 'training' || typed.holds === 'rest' ? typed.holds : 'every',
      basis: 'entered',
      proteinG,
      carbohydrateG,
      fatG,
      ...(typed.fibreMinG !== undefined && { fibreMinG: typed.fibreMinG }),
      ...(typed.sodiumMaxMg !== undefined && { sodiumMaxMg: typed.sodiumMaxMg }),
    },
    { says: 'Targets kept' },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(DRAFT);
  go(pathTo('day'));
  if (hadPlan) await planNow('asked');
}
