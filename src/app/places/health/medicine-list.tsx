import type { JSX } from 'preact';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { Button } from '../../parts/button.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { ledger } from '../../state/open-journal.ts';

type Medicine = DataOf<'medicine-declared'>;

/** Medicines that are declared, the newest word of each. */
export function medicines(): readonly Medicine[] {
  const newest = new Map(ledger.value.of('medicine-declared').map(({ data }) => [data.medicine, data]));
  return [...newest.values()].filter(({ until }) => until === undefined || until >= today.value);
}

/** Prescribed medicines: their times are the prescriber's, and what is planned keeps clear of them. */
export function MedicineList(): JSX.Element {
  const declared = medicines();
  return (
    <Section
      title="Prescribed medicines"
      action={
        <Button kind="quiet" href={pathTo('health', 'medicine', 'new')}>
          Declare one
        </Button>
      }
    >
      {declared.length === 0 ? (
        <Note>None is declared. Supplements keep clear of a medicine only if it is.</Note>
      ) : (
        <List label="Medicines">
          {declared.map(({ medicine, name, at }) => (
            <ListRow
              key={medicine}
              title={name}
              detail={at.length === 0 ? 'without a fixed time' : `at ${at.join(', ')}`}
              href={pathTo('health', 'medicine', medicine)}
            />
          ))}
        </List>
      )}
    </Section>
  );
}
