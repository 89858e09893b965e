import type { JSX } from 'preact';
import type { AfterwardsNow } from '#core/cycle/afterwards-now.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { athlete } from '../../views/athlete-view.ts';
import './check-in-screen.css';
import { FELT, feltDraft, type FeltDraft, feltFrom } from './felt-draft.ts';

const SCORES = ['1', '2', '3', '4', '5'] as const;

/** Signs of recovery, asked and held against before; and when to see a physician, said plainly and without shame. */
export function WayBackMarkers({ now }: { readonly now: AfterwardsNow }): JSX.Element {
  const { markers, cautions } = now.plan;
  return (
    <Section title="Watch each week" detail={markers.join(', ')}>
      <div class="stack">
        {now.recovery.why.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <Felt />
        {athlete.value?.sex === 'female' && (
          <div class="row">
            <Button href={pathTo('body', 'cycle')}>Menses</Button>
          </div>
        )}
        <Caution title="Care" words={cautions} />
      </div>
    </Section>
  );
}

function Felt(): JSX.Element {
  const key = `course/felt/${today.value}`;
  const typed = draft(key, feltDraft, {});
  const change = (part: Partial<FeltDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  const noted = feltFrom(typed.value);
  return (
    <div class="stack scores">
      {FELT.map(({ key: name, label, low, high }) => (
        <ChoiceField
          key={name}
          label={label}
          layout="row"
          value={typed.value[name]}
          hint={`1 ${low}, 5 ${high}`}
          options={SCORES.map((value) => ({ value, label: value }))}
          onValue={(value) => change({ [name]: value })}
        />
      ))}
      <Button
        records
        wide
        disabled={!noted}
        onPress={() => {
          if (!noted) return;
          void record('feeling-noted', noted, { says: 'Noted how it is' }).then((saved) => {
            if (saved.status !== 'refused') clearDraft(key);
          });
        }}
      >
        Note how it is
      </Button>
      <Note>Once a week is enough; three notes a week tell more.</Note>
    </div>
  );
}
