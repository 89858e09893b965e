import type { JSX } from 'preact';
import type { SheetMeal } from '#core/cycle/day-sheet.ts';
import { formatClock } from '#core/units/clock.ts';
import { capital } from '#core/units/capital.ts';
import { ScaleButton } from '../../chooser/scale-button.tsx';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Figure } from '../../parts/figure.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { ScaleDisplay } from '../../parts/scale-display.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { sheet } from '../../views/day-view.ts';
import {
  emptyWeigh,
  inTheBowlG,
  weighDraft,
  weighedItems,
  weighSteps,
  type WeighDraft,
  type WeighStep,
} from './weigh-draft.ts';

/** Weighs one planned meal out, item by item, into one bowl or tared for each; logs it with one tap. */
export function WeighScreen({ slot }: { readonly slot: string }): JSX.Element {
  const meal = sheet.value.meals.find((candidate) => candidate.slot === slot);
  if (!meal || meal.eaten) {
    return (
      <Page title="Weigh out" back={pathTo('day')}>
        <EmptyState
          title={meal ? 'This meal is logged' : 'This meal is no longer on the run sheet'}
          words="The plan has moved on."
          action={<Button href={pathTo('day')}>Back to the day</Button>}
        />
      </Page>
    );
  }
  return <Weighing meal={meal} />;
}

function Weighing({ meal }: { readonly meal: SheetMeal }): JSX.Element {
  const key = `day/weigh/${meal.slot}`;
  const typed = draft(key, weighDraft, emptyWeigh);
  const steps = weighSteps(meal, typed.value);
  const at = Math.min(typed.value.at, steps.length);
  const step = steps[at];
  const change = (part: Partial<WeighDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  return (
    <Page
      title={`Meal at ${formatClock(meal.at)}`}
      detail={`${steps.length} items`}
      back={pathTo('day')}
      busy
    >
      {step ? (
        <OnTheScale
          step={step}
          count={steps.length}
          at={at}
          bowlG={inTheBowlG(steps, at)}
          show={typed.value.show}
          onWeighed={(grams) => change({ weighed: { ...typed.value.weighed, [String(step.index)]: grams } })}
        />
      ) : (
        <p class="weigh-done">Everything is in the bowl: {Math.round(inTheBowlG(steps, steps.length))} g.</p>
      )}
      <ChoiceField
        label="The scale"
        layout="row"
        value={typed.value.show}
        options={[
          { value: 'total', label: 'One bowl, running total' },
          { value: 'item', label: 'Tared for each' },
        ]}
        onValue={(show) => change({ show })}
      />
      <Steps steps={steps} at={at} onGo={(to) => change({ at: to })} />
      <ActionBar>
        {step ? (
          <Button kind="next" wide onPress={() => change(weighedAndOn(typed.value, step, at))}>
            {at + 1 < steps.length ? 'In the bowl, next' : 'In the bowl, done'}
          </Button>
        ) : (
          <Button kind="next" records wide onPress={() => void log(meal, typed.value, key)}>
            Log this meal
          </Button>
        )}
      </ActionBar>
    </Page>
  );
}

function weighedAndOn(typed: WeighDraft, step: WeighStep, at: number): Partial<WeighDraft> {
  return { weighed: { ...typed.weighed, [String(step.index)]: step.weighedG ?? step.plannedG }, at: at + 1 };
}

interface OnTheScaleProps {
  readonly step: WeighStep;
  readonly at: number;
  readonly count: number;
  readonly bowlG: number;
  readonly show: WeighDraft['show'];
  readonly onWeighed: (grams: number) => void;
}

function OnTheScale({ step, at, count, bowlG, show, onWeighed }: OnTheScaleProps): JSX.Element {
  return (
    <>
      <ScaleDisplay
        item={capital(step.name)}
        addG={step.plannedG}
        totalG={bowlG + step.plannedG}
        show={show}
        step={`${at + 1} of ${count}`}
      />
      <NumberField
        label="Weighed differently"
        hint="Grams of this item alone. Leave it when the scale agrees."
        unit="g"
        decimals={0}
        min={0}
        max={5000}
        value={step.weighedG}
        onValue={(grams) => {
          if (grams !== undefined) onWeighed(grams);
        }}
        optional
      />
      <ScaleButton
        onReading={({ massKg }) => {
          if (massKg !== undefined)
            onWeighed(Math.max(0, Math.round(1000 * massKg) - (show === 'total' ? bowlG : 0)));
        }}
      />
    </>
  );
}

function Steps({
  steps,
  at,
  onGo,
}: {
  readonly steps: readonly WeighStep[];
  readonly at: number;
  readonly onGo: (at: number) => void;
}): JSX.Element {
  return (
    <List>
      {steps.map((step, place) => (
        <ListRow
          key={step.index}
          title={capital(step.name)}
          state={place < at ? 'done' : place === at ? 'next' : 'plain'}
          figure={
            <Figure
              value={step.weighedG ?? step.plannedG}
              unit="g"
              size="line"
              label={step.name}
              labelHidden
            />
          }
          onPress={() => onGo(place)}
        />
      ))}
    </List>
  );
}

async function log(meal: SheetMeal, typed: WeighDraft, key: string): Promise<void> {
  const saved = await record(
    'meal-eaten',
    { slot: meal.slot, items: weighedItems(meal, typed) },
    { says: 'Meal logged, stock lowered' },
  );
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(pathTo('day'));
}
