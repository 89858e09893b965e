import type { JSX } from 'preact';
import type { SheetItem, SheetMeal } from '#core/cycle/day-sheet.ts';
import { capital } from '#core/units/capital.ts';
import { Figure } from '../../parts/figure.tsx';
import { itemWhy } from './whys.ts';
import './meal-items.css';

/** What goes on the plate, grams first, to be read at arm's length. */
export function MealItems({ meal }: { readonly meal: SheetMeal }): JSX.Element {
  return (
    <ul class="meal-items">
      {meal.items.map((item, place) => (
        <li key={place} class="meal-item">
          <ItemFigure item={item} />
          <span class="meal-item-name">{capital(item.name)}</span>
        </li>
      ))}
    </ul>
  );
}

function ItemFigure({ item }: { readonly item: SheetItem }): JSX.Element {
  return (
    <Figure
      value={item.grams}
      unit="g"
      size="large"
      label={item.name}
      labelHidden
      why={() => itemWhy(item)}
    />
  );
}
