import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { BAG_MEALS, type BagThing } from '#core/course/show-bag.ts';
import type { ShowDayNow } from '#core/cycle/show-day-now.ts';
import { Button } from '../../parts/button.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { record } from '../../state/open-journal.ts';

/** What goes along, ticked when it is in the bag. */
export function ShowBag({ day }: { readonly day: ShowDayNow }): JSX.Element {
  const typed = useSignal('');
  const { bag, show } = day;
  const packed = bag.filter((one) => one.packed).length;
  const put = (thing: string, isIn: boolean): void => {
    void record(
      'thing-packed',
      { show: show.show, thing, packed: isIn },
      { says: isIn ? `In the bag: ${thing}` : `Not in the bag: ${thing}` },
    );
  };
  return (
    <Section title="The bag" detail={`${packed} of ${bag.length} in it`}>
      <div class="stack">
        <div>
          {bag.map((one) => (
            <CheckField
              key={one.thing}
              label={one.thing}
              detail={detailOf(one, day)}
              checked={one.packed}
              onChecked={(isIn) => put(one.thing, isIn)}
            />
          ))}
        </div>
        <div class="row">
          <TextField
            label="Something else"
            value={typed.value}
            onValue={(text) => {
              typed.value = text;
            }}
            optional
          />
          <Button
            records
            disabled={typed.value.trim() === ''}
            onPress={() => {
              put(typed.value.trim().slice(0, 80), false);
              typed.value = '';
            }}
          >
            Add it
          </Button>
        </div>
        <Note>Pack the evening before; the meals come out of the fridge last.</Note>
      </div>
    </Section>
  );
}

/** The meals in the bag are the plates of the day, added up by food. */
function detailOf({ thing }: BagThing, { rows }: ShowDayNow): string | undefined {
  if (thing !== BAG_MEALS) return undefined;
  const grams = new Map<string, number>();
  for (const { plate } of rows)
    for (const item of plate?.items ?? [])
      grams.set(item.name, (grams.get(item.name) ?? 0) + (item.grams ?? 0));
  if (grams.size === 0) return undefined;
  return [...grams].map(([name, weight]) => `${Math.round(weight)} g ${name}`).join(', ');
}
