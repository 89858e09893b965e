import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { LENT_PARTS } from '#core/journal/kinds/lending.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { syncing, syncNow } from '../../state/sync.ts';
import { newId } from '../../views/new-id.ts';
import { problemAt } from '../../views/problem-at.ts';
import { emptyLoan, type LendDraft, lendDraft, loanFrom, PART_WORDS, withPart } from './lend-draft.ts';

const DRAFT = 'journal/lend';
const problems = signal<readonly Problem[]>([]);

/** Chosen parts of the journal for somebody to read, until a day. */
export function LendScreen(): JSX.Element {
  const back = pathTo('journal', 'lent');
  if (syncing.value.status === 'off')
    return (
      <Page title="Lend a copy" back={back}>
        <EmptyState
          title="A lent copy goes through a server, sealed"
          words="It needs this journal's key. Make one under Devices first; a second device is not needed."
          action={<Button href={pathTo('journal', 'devices')}>Devices</Button>}
        />
      </Page>
    );
  const typed = draft(DRAFT, lendDraft, emptyLoan(today.value));
  const change = (part: Partial<LendDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  return (
    <Page title="Lend a copy" back={back}>
      <Form onSubmit={() => void lend(typed.value)} problems={problems.value}>
        <Columns wide="even">
          <Whom typed={typed.value} change={change} />
          <What typed={typed.value} change={change} />
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits>
            Lend it
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface PartProps {
  readonly typed: LendDraft;
  readonly change: (part: Partial<LendDraft>) => void;
}

function Whom({ typed, change }: PartProps): JSX.Element {
  return (
    <Section title="To whom, and how long">
      <div class="stack">
        <TextField
          label="For"
          hint="the coach, the physician"
          value={typed.to}
          onValue={(to) => change({ to })}
          problem={problemAt(problems.value, 'to')}
        />
        <DateField
          label="Last day"
          value={typed.until}
          min={today.value}
          onValue={(until) => change({ until })}
          problem={problemAt(problems.value, 'until')}
        />
        <DateField
          label="Nothing older than"
          hint="empty: everything from the start"
          value={typed.since}
          max={today.value}
          onValue={(since) => change({ since })}
          problem={problemAt(problems.value, 'since')}
          optional
        />
        <Note>
          It follows your journal until the last day, can only be read, and can be taken back at any time.
          What somebody has read or written off meanwhile cannot be taken back.
        </Note>
      </div>
    </Section>
  );
}

function What({ typed, change }: PartProps): JSX.Element {
  return (
    <Section title="What may be read">
      <div class="stack">
        {LENT_PARTS.map((part) => (
          <CheckField
            key={part}
            label={PART_WORDS[part].label}
            detail={PART_WORDS[part].detail}
            checked={typed.parts.includes(part)}
            onChecked={(chosen) => change({ parts: withPart(typed.parts, part, chosen) })}
          />
        ))}
        {typed.parts.includes('health') && (
          <Caution
            title="Blood and medicines say much about you"
            words="Lend them to people bound to keep them to themselves, and only as long as they need them."
          />
        )}
        <Note>
          Your name, year of birth, sex and height go along. Notes and photographs always stay here.
        </Note>
      </div>
    </Section>
  );
}

async function lend(typed: LendDraft): Promise<void> {
  const loan = loanFrom(typed, newId('loan'), today.peek());
  if (!loan.ok) {
    problems.value = [loan.problem];
    return;
  }
  const saved = await record('copy-lent', loan.value, { says: `Lent to ${loan.value.to}` });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(DRAFT);
  void syncNow();
  go(pathTo('journal', 'loan', loan.value.loan));
}
