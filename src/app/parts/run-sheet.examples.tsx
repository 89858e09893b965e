import type { Example } from '../gallery/example.ts';
import { Button } from './button.tsx';
import { Figure } from './figure.tsx';
import { List, ListRow } from './list.tsx';
import { RunRow, RunSheet } from './run-sheet.tsx';

export const examples: readonly Example[] = [
  {
    name: 'a day with its next meal open',
    show: () => (
      <RunSheet>
        <RunRow
          at={400}
          title="Weigh-in"
          state="done"
          figures={<Figure value={81.4} unit="kg" decimals={1} />}
          href="#/body"
        />
        <RunRow at={425} title="Walk before eating" detail="40 min" state="skipped" href="#/gym" />
        <RunRow
          at={615}
          title="Meal 1"
          detail="hours behind: planned 08:00"
          state="done"
          figures={<Figure value={620} unit="kcal" />}
          href="#/day/1"
        />
        <RunRow
          at={825}
          title="Meal 2"
          detail="before training"
          state="next"
          figures={<Figure value={540} unit="kcal" />}
        >
          <List label="Meal 2">
            <ListRow title="Rice, cooked" figure={<Figure value={212} unit="g" />} />
            <ListRow title="Chicken breast, cooked" figure={<Figure value={168} unit="g" />} />
          </List>
          <Button kind="next" wide href="#/day/weigh/2">
            Weigh it out
          </Button>
        </RunRow>
        <RunRow at={990} title="Training" detail="Legs, 90 min" state="planned" href="#/gym/session" />
        <RunRow
          at={1110}
          title="Meal 3"
          detail="after training"
          state="changed"
          figures={<Figure value={710} unit="kcal" />}
          href="#/day/3"
        />
        <RunRow
          at={1290}
          title="Meal 4"
          state="planned"
          figures={<Figure value={430} unit="kcal" />}
          href="#/day/4"
        />
      </RunSheet>
    ),
  },
];
