import type { Example } from '../gallery/example.ts';
import { Kept } from '../gallery/kept.tsx';
import { Figure } from './figure.tsx';
import { SearchField } from './search-field.tsx';

const FOODS = [
  'Rice, white, cooked',
  'Rice, brown, cooked',
  'Oats, rolled',
  'Chicken breast, cooked',
  'Egg, whole',
];

export const examples: readonly Example[] = [
  {
    name: 'search by typing',
    show: () => (
      <Kept first="rice">
        {(query, keep) => (
          <SearchField
            label="Food"
            query={query}
            onQuery={keep}
            onChoose={keep}
            nothing="No food by that name. Try fewer letters."
            results={FOODS.filter(
              (food) => query !== '' && food.toLowerCase().includes(query.toLowerCase()),
            ).map((food, index) => ({
              id: food,
              title: food,
              detail: index === 0 ? '640 g in the fridge' : 'none at home',
              figure: <Figure value={130 + index * 7} unit="kcal" size="line" />,
            }))}
          />
        )}
      </Kept>
    ),
  },
  {
    name: 'nothing found',
    show: () => (
      <SearchField
        label="Food to add"
        query="qzx"
        onQuery={() => undefined}
        onChoose={() => undefined}
        results={[]}
        nothing="No food by that name. Try fewer letters, or enter it from its label."
      />
    ),
  },
];
