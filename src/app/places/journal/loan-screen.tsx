import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { type Loan, loansOf } from '#core/journal/lent-entries.ts';
import { dateWords } from '#core/words/dates.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Facts } from '../../parts/facts.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { isLent, loanPhrase } from '../../state/loans.ts';
import { now } from '../../state/moments.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { syncing, syncNow } from '../../state/sync.ts';
import { clockOf } from './clock-of.ts';
import { KeyWords } from './key-words.tsx';
import { PART_WORDS } from './lend-draft.ts';

const phrase = signal<string | undefined>(undefined);

/** One lent copy: what it holds, the words that open it, and the way to take it back. */
export function LoanScreen({ id }: { readonly id: string }): JSX.Element {
  const back = pathTo('journal', 'lent');
  const loan = loansOf(ledger.value).find((one) => one.loan === id);
  if (!loan)
    return (
      <Page title="Lent copy" back={back}>
        <EmptyState
          title="No such copy is lent"
          words="It may have been written on a device not yet in step."
        />
      </Page>
    );
  const open = isLent(loan, now.value);
  return (
    <Page title={`For ${loan.to}`} back={back}>
      <Section title={open ? 'What it holds' : 'Over'}>
        <div class="stack">
          <Facts items={factsOf(loan)} />
          {open && <Standing />}
        </div>
      </Section>
      {open && <Words loan={loan} />}
      {open && (
        <Section title="Enough of it">
          <div class="stack">
            <Note>The server drops the copy at once; where it is open, it closes within a minute.</Note>
            <Button kind="caution" records onPress={() => void takeBack(loan)}>
              Take it back
            </Button>
          </div>
        </Section>
      )}
    </Page>
  );
}

function factsOf(loan: Loan) {
  return [
    { name: 'May read', value: loan.parts.map((part) => PART_WORDS[part].label).join(', ') },
    { name: 'From', value: loan.since === undefined ? 'the start' : dateWords(loan.since) },
    { name: 'Last day', value: loan.takenBack === true ? 'taken back' : dateWords(loan.until) },
  ];
}

function Standing(): JSX.Element {
  const state = syncing.value;
  if (state.status === 'off')
    return (
      <Caution
        title="This device does not bring it"
        words="Go on under Devices; other devices of yours bring it still."
      />
    );
  if (state.status === 'apart') return <Caution title={state.problem.message} words={state.problem.remedy} />;
  if (state.status !== 'in step') return <Note>Bringing it to the server …</Note>;
  return (
    <>
      <Note>{`On the server as of ${clockOf(state.atMs)}.`}</Note>
      {state.problems.map((problem) => (
        <Caution key={problem.path} title={problem.message} words={problem.remedy} />
      ))}
    </>
  );
}

function Words({ loan }: { readonly loan: Loan }): JSX.Element {
  useEffect(() => () => void (phrase.value = undefined), []);
  const words = phrase.value;
  if (words === undefined)
    return (
      <Section title="How it is opened">
        <Button
          kind="next"
          onPress={() => void loanPhrase(loan.loan).then((found) => (phrase.value = found))}
        >
          Show the phrase
        </Button>
      </Section>
    );
  return (
    <Section
      title="How it is opened"
      action={<Button onPress={() => (phrase.value = undefined)}>Hide the phrase</Button>}
    >
      <div class="stack">
        <p>
          {`${loan.to} opens this app at this address, Journal, Lent copies, and types these 18 words or reads the square.`}
        </p>
        <KeyWords words={words} label="The phrase of the lent copy as a QR code" />
        <Caution
          title="Whoever has these words can read the copy"
          words="Hand them over in person, or through something that nobody else reads."
        />
      </div>
    </Section>
  );
}

async function takeBack(loan: Loan): Promise<void> {
  const saved = await record(
    'copy-lent',
    { ...loan, takenBack: true },
    { says: `Taken back from ${loan.to}` },
  );
  if (saved.status === 'refused') return;
  void syncNow();
  go(pathTo('journal', 'lent'));
}
