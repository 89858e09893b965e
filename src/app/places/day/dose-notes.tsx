import type { JSX } from 'preact';
import { nowClock } from '../../state/clock.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Section } from '../../parts/section.tsx';
import { ledger } from '../../state/open-journal.ts';
import { doses } from '../../views/health-view.ts';
import { doseWords } from '../../views/dose-words.ts';
import { skipDose, takeDoses } from '../../views/take-dose.ts';
import { productsIn, regimensIn } from '#core/health/supplements/regimens.ts';

/** Doses of today without a place on the run sheet, each with the reason; nothing where all have one. */
export function DoseNotes(): JSX.Element | null {
  if (!doses.value.ok) return null;
  const { missed, refused, impossible, conflicts } = doses.value.value.answer;
  if (missed.length + refused.length + impossible.length + conflicts.length === 0) return null;
  return (
    <Section title="Supplements without a time">
      {[...impossible, ...conflicts, ...refused].map(({ words, source }) => (
        <Caution key={words} title="Not planned" words={words} source={source} />
      ))}
      {missed.length > 0 && (
        <List label="Missed doses">
          {missed.map(({ regimen, words }) => (
            <MissedDose key={regimen} regimen={regimen} words={words} />
          ))}
        </List>
      )}
    </Section>
  );
}

/** Its moment has passed: it may still have been taken, or is let go. */
function MissedDose({
  regimen,
  words,
}: {
  readonly regimen: string;
  readonly words: string;
}): JSX.Element | null {
  const set = regimensIn(ledger.value).find((one) => one.regimen === regimen);
  const product = set && productsIn(ledger.value).get(set.supplement);
  if (!set || !product) return null;
  const item = {
    regimen,
    supplement: set.supplement,
    name: product.name,
    units: set.units,
    unit: product.unit,
    at: '',
    words,
  };
  return (
    <ListRow
      title={doseWords(item)}
      detail={words}
      figure={
        <div class="row">
          <Button
            records
            onPress={() => void takeDoses([item], nowClock.peek())}
            label={`Taken all the same: ${item.name}`}
          >
            Taken
          </Button>
          <Button
            kind="quiet"
            records
            onPress={() => void skipDose(item, 'Its moment had passed')}
            label={`Leave out ${item.name}`}
          >
            Leave out
          </Button>
        </div>
      }
    />
  );
}
