import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { SearchField } from '../parts/search-field.tsx';
import { kitchen } from '../views/kitchen-view.ts';

export interface FoodChooserProps {
  readonly label: string;
  readonly onChoose: (foodId: string) => void;
}

/** Finds a food by typing: what is in stock and favourites first, words in any order, small slips forgiven. */
export function FoodChooser({ label, onChoose }: FoodChooserProps): JSX.Element {
  const query = useSignal('');
  return (
    <SearchField
      label={label}
      query={query.value}
      onQuery={(text) => {
        query.value = text;
      }}
      results={kitchen.value.search(query.value)}
      onChoose={(id) => {
        query.value = '';
        onChoose(id);
      }}
      nothing="No food by that name. Enter its label in the Kitchen to add it."
    />
  );
}
