import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import { type Loan, loansOf } from '#core/journal/lent-entries.ts';
import type { Outcome, Problem } from '#core/problems/problem.ts';
import { dateWords } from '#core/words/dates.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Form } from '../../parts/form.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { which } from '../../state/journals.ts';
import { forgetCopy, type KnownCopy, lentToMe, readByPhrase, readCopy, shut } from '../../state/lent.ts';
import { isLent } from '../../state/loans.ts';
import { now } from '../../state/moments.ts';
import { ledger } from '../../state/open-journal.ts';
import { frontOf } from '../../views/lent-places.ts';
import { problemAt } from '../../views/problem-at.ts';
import { PART_WORDS } from './lend-draft.ts';

const DRAFT = 'journal/read-lent';
const phraseDraft = v.strictObject({ phrase: v.string() });
const problems = signal<readonly Problem[]>([]);
const busy = signal(false);

/** Copies lent to others and copies that others lent: read by phrase, until their last day. */
export function LentScreen(): JSX.Element {
  return (
    <Page title="Lent copies" back={pathTo('journal')}>
      {shut.value && <Caution title={shut.value.message} words={shut.value.remedy} />}
      {which.value === 'own' && <LentOut />}
      <LentToMe />
    </Page>
  );
}

function LentOut(): JSX.Element {
  const loans = loansOf(ledger.value);
  return (
    <Section
      title="Lent by you"
      detail="Chosen parts of your journal, for a coach or a physician to read for a time"
    >
      <div class="stack">
        {loans.length === 0 ? (
          <Note>Nobody reads anything of this journal.</Note>
        ) : (
          <List>
            {loans.map((loan) => (
              <ListRow
                key={loan.loan}
                title={loan.to}
                detail={`${loan.parts.map((part) => PART_WORDS[part].label).join(', ')}; ${endWords(loan)}`}
                href={pathTo('journal', 'loan', loan.loan)}
              />
            ))}
          </List>
        )}
        <Button href={pathTo('journal', 'lend')}>Lend a copy</Button>
      </div>
    </Section>
  );
}

function endWords(loan: Loan): string {
  if (loan.takenBack === true) return 'taken back';
  return isLent(loan, now.value) ? `until ${dateWords(loan.until)}` : `ended ${dateWords(loan.until)}`;
}

function LentToMe(): JSX.Element {
  const typed = draft(DRAFT, phraseDraft, { phrase: '' });
  const read = async (): Promise<void> => {
    const outcome = await whileBusy(() => readByPhrase(typed.value.phrase));
    if (outcome.ok) clearDraft(DRAFT);
  };
  return (
    <Section title="Lent to you" detail="Nothing of it is kept on this device; it needs a connection">
      <div class="stack">
        {lentToMe.value.length > 0 && (
          <List>
            {lentToMe.value.map((copy) => (
              <KnownRow key={copy.secret} copy={copy} />
            ))}
          </List>
        )}
        <Form onSubmit={() => void read()} problems={problems.value}>
          <div class="stack">
            <TextField
              label="Phrase of the copy"
              hint="the 18 words that its lender shows you"
              lines={3}
              value={typed.value.phrase}
              onValue={(phrase) => (typed.value = { phrase })}
              problem={problemAt(problems.value, 'phrase')}
            />
            <Button submits disabled={busy.value}>
              Read the copy
            </Button>
          </div>
        </Form>
      </div>
    </Section>
  );
}

function KnownRow({ copy }: { readonly copy: KnownCopy }): JSX.Element {
  return (
    <ListRow
      title={copy.from}
      detail={`until ${dateWords(copy.until)}`}
      figure={
        <span class="row">
          <Button disabled={busy.value} onPress={() => void whileBusy(() => readCopy(copy.secret))}>
            Read
          </Button>
          <Button onPress={() => forgetCopy(copy.secret)}>Forget</Button>
        </span>
      }
    />
  );
}

/** Opens a copy and goes to the first place that it holds; what is in the way stands by the phrase. */
async function whileBusy(open: () => Promise<Outcome<Loan>>): Promise<Outcome<Loan>> {
  busy.value = true;
  try {
    const outcome = await open();
    problems.value = outcome.ok ? [] : [outcome.problem];
    if (outcome.ok) go(pathTo(frontOf(outcome.value.parts[0] ?? 'course')));
    return outcome;
  } finally {
    busy.value = false;
  }
}
