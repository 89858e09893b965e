import type { JSX } from 'preact';
import type { DoubtfulWeight } from '#core/body/suspect-units.ts';
import { dateWords } from '#core/words/dates.ts';
import { Button } from '../../parts/button.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';

import { correct, ledger } from '../../state/open-journal.ts';
import { daysToSettle, weighIns } from '../../views/body-view.ts';
import { massUnit } from '../../views/mass-units.ts';

/** So many days are asked about at once; more would be a wall. */
const ASKED = 3;

/** What the journal cannot know by itself: it is asked, and until then nothing is guessed. */
export function ToSettle({ doubtful }: { readonly doubtful: readonly DoubtfulWeight[] }): JSX.Element | null {
  const pounds = doubtful.filter(({ reason }) => reason === 'pounds').slice(0, ASKED);
  const days = daysToSettle.value.slice(0, ASKED);
  if (pounds.length === 0 && days.length === 0) return null;
  return (
    <Section title="To settle" detail="asked, never guessed">
      <List label="Questions">
        {pounds.map((one) => (
          <DoubtRow key={one.date} doubt={one} />
        ))}
        {days.map(({ day, meals }) => (
          <ListRow
            key={day}
            title={`Food of ${dateWords(day)}`}
            detail={
              meals === 0
                ? 'nothing is logged: a fast, or not logged?'
                : `${meals} ${meals === 1 ? 'meal' : 'meals'} logged: was that all?`
            }
            href={pathTo('body', 'intake', day)}
          />
        ))}
      </List>
    </Section>
  );
}

function DoubtRow({ doubt }: { readonly doubt: DoubtfulWeight }): JSX.Element {
  const { unit, shown } = massUnit.value;
  const entry = weighIns.value.find(({ day }) => day === doubt.date)?.entry;
  const settle = (): void => {
    const fact = entry === undefined ? undefined : ledger.value.fact(entry);
    if (fact?.kind !== 'body-weighed' || entry === undefined) return;
    void correct(entry, { ...fact.data, massKg: doubt.asPoundsKg }, { says: 'Read as pounds' });
  };
  return (
    <ListRow
      title={`${shown(doubt.weightKg).toFixed(1)} ${unit} on ${dateWords(doubt.date)}`}
      detail={`typed in pounds? It would be ${shown(doubt.asPoundsKg).toFixed(1)} ${unit}`}
      figure={
        <Button records onPress={settle}>
          It was pounds
        </Button>
      }
    />
  );
}
