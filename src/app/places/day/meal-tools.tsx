import type { JSX } from 'preact';
import type { SheetMeal } from '#core/cycle/day-sheet.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { Button } from '../../parts/button.tsx';
import { pathTo } from '../../shell/route.ts';
import { record } from '../../state/open-journal.ts';
import { sheet } from '../../views/day-view.ts';
import { planNow } from '../../views/planner.ts';

/** What can be done with a planned meal beside weighing it out. */
export function MealTools({ meal }: { readonly meal: SheetMeal }): JSX.Element {
  return (
    <div class="row">
      <Button records onPress={() => void eatAsPlanned(meal)}>
        Eaten as planned
      </Button>
      <Button kind="quiet" href={pathTo('day', 'eat', meal.slot)}>
        Eaten differently
      </Button>
      <Button kind="quiet" records onPress={() => void pin(meal, !meal.planned.pinned)}>
        {meal.planned.pinned ? 'Unpin' : 'Pin: packed already'}
      </Button>
      <Button kind="quiet" records onPress={() => void skip(meal)}>
        Skip it
      </Button>
    </div>
  );
}

function eatAsPlanned(meal: SheetMeal): Promise<unknown> {
  return record(
    'meal-eaten',
    { slot: meal.slot, items: meal.planned.items },
    { says: 'Meal logged, stock lowered' },
  );
}

/** A skipped meal frees its grams, so the rest of the day is planned again. */
async function skip(meal: SheetMeal): Promise<void> {
  const saved = await record('meal-skipped', { slot: meal.slot }, { says: 'Meal skipped' });
  if (saved.status !== 'refused') await planNow('meal skipped');
}

/** A pinned meal keeps its time and grams on every new plan. */
function pin(meal: SheetMeal, pinned: boolean): Promise<unknown> {
  const plan = sheet.value.plan;
  if (!plan) return Promise.resolve();
  const meals: DataOf<'plan-adopted'>['meals'] = plan.data.meals.map((planned) =>
    planned.slot === meal.slot ? { ...planned, pinned } : planned,
  );
  return record('plan-adopted', { ...plan.data, meals }, { says: pinned ? 'Pinned' : 'Unpinned' });
}
