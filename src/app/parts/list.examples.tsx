import type { Example } from '../gallery/example.ts';
import { Figure } from './figure.tsx';
import { List, ListRow } from './list.tsx';
import { Tag } from './tag.tsx';

export const examples: readonly Example[] = [
  {
    name: 'stock, oldest first',
    show: () => (
      <List label="In the fridge">
        <ListRow
          title="Beef and onions"
          detail="2 portions of 174 g, cooked Monday"
          figure={
            <>
              <Tag kind="caution">use today</Tag>
              <Figure value={348} unit="g" />
            </>
          }
          href="#/kitchen/beef"
        />
        <ListRow
          title="Rice, white, cooked"
          detail="use by Thursday"
          figure={<Figure value={640} unit="g" />}
          onPress={() => undefined}
        />
        <ListRow title="Egg whites" figure={<Figure value={1.2} unit="kg" decimals={1} />} />
      </List>
    ),
  },
  {
    name: 'done and next',
    show: () => (
      <List label="Into the bowl">
        <ListRow state="done" title="Rice" figure={<Figure value={212} unit="g" />} />
        <ListRow state="next" title="Chicken" figure={<Figure value={168} unit="g" />} />
        <ListRow title="Broccoli" figure={<Figure value={150} unit="g" />} />
      </List>
    ),
  },
];
