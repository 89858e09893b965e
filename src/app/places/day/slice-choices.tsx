import type { JSX } from 'preact';
import type { PlateItem } from '#core/journal/kinds/plate-item.ts';
import { List, ListRow } from '../../parts/list.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { kitchen } from '../../views/kitchen-view.ts';

type Slices = Extract<PlateItem, { source: 'slices' }>;

/** Recipes that say their slices: one tap puts a slice on the plate, weighed cooked or not. */
export function SliceChoices({ onChoose }: { readonly onChoose: (item: Slices) => void }): JSX.Element {
  const recipes = kitchen.value.catalogue.recipes().filter((recipe) => recipe.yields.slices !== undefined);
  return (
    <List>
      {recipes.map(({ recipe, name, yields }) => (
        <ListRow
          key={recipe}
          title={name}
          detail={`1 slice of ${yields.slices ?? 1}`}
          onPress={() => onChoose({ source: 'slices', recipe, slices: 1 })}
        />
      ))}
    </List>
  );
}

/** How many slices are on the plate. */
export function SlicesField({
  item,
  label,
  onItem,
}: {
  readonly item: Slices;
  readonly label: string;
  readonly onItem: (item: Slices) => void;
}): JSX.Element {
  return (
    <NumberField
      label={label}
      unit={item.slices === 1 ? 'slice' : 'slices'}
      decimals={2}
      min={0}
      max={500}
      value={item.slices}
      onValue={(slices) => onItem({ source: 'slices', recipe: item.recipe, slices: slices ?? 0 })}
    />
  );
}

/** Whether there is anything to offer by the slice. */
export function hasSlices(): boolean {
  return kitchen.value.catalogue.recipes().some((recipe) => recipe.yields.slices !== undefined);
}
