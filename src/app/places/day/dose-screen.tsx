import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import type { DoseItem } from '#core/cycle/doses-of-day.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { unitsWords } from '../../views/dose-words.ts';
import { doses } from '../../views/health-view.ts';
import { skipDose, takeDoses } from '../../views/take-dose.ts';

/** Why a dose is left out, as it is mostly said. */
const REASONS = ['Ran out', 'Unwell', 'Before a blood draw', 'Not with this meal'] as const;

/** The doses of one moment, one by one: taken, or skipped with the reason. */
export function DoseScreen({ group }: { readonly group: string }): JSX.Element {
  const found = doses.value.ok ? doses.value.value.groups.find(({ key }) => key === group) : undefined;
  const began = useSignal(found !== undefined);
  useEffect(() => {
    // The last one is done: back to the run sheet, where undo still stands.
    if (began.value && found === undefined) go(pathTo('day'));
  }, [found === undefined]);
  return (
    <Page
      title="Supplements now"
      back={pathTo('day')}
      busy
      {...(found && { detail: `at ${found.items[0]?.at}` })}
    >
      {found ? (
        <>
          {found.items.map((item) => (
            <OneDose key={item.regimen} item={item} />
          ))}
          <ActionBar>
            <Button kind="next" wide records onPress={() => void takeDoses(found.items)}>
              {found.items.length === 1 ? 'It is taken' : `All ${found.items.length} taken`}
            </Button>
          </ActionBar>
        </>
      ) : (
        <EmptyState
          title="Nothing is left to take here."
          words="What was taken or skipped stands on the run sheet; the day may have been planned anew since."
        />
      )}
    </Page>
  );
}

function OneDose({ item }: { readonly item: DoseItem }): JSX.Element {
  const skipping = useSignal(false);
  const reason = useSignal('');
  return (
    <Section title={item.name} detail={`${unitsWords(item.units, item.unit)}, ${item.words}`}>
      <div class="row">
        <Button records onPress={() => void takeDoses([item])} label={`Taken: ${item.name}`}>
          Taken
        </Button>
        <Button
          kind="quiet"
          pressed={skipping.value}
          onPress={() => (skipping.value = !skipping.value)}
          label={`Skip ${item.name}`}
        >
          Skip
        </Button>
      </div>
      {skipping.value && (
        <div class="stack">
          <div class="row">
            {REASONS.map((words) => (
              <Button key={words} records onPress={() => void skipDose(item, words)}>
                {words}
              </Button>
            ))}
          </div>
          <TextField label="Another reason" value={reason.value} onValue={(text) => (reason.value = text)} />
          <Button
            records
            disabled={reason.value.trim() === ''}
            onPress={() => void skipDose(item, reason.value.trim())}
          >
            Skip for this reason
          </Button>
        </div>
      )}
    </Section>
  );
}
