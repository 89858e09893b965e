import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { LastWeekNow } from '#core/cycle/last-week-now.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { WhyButton } from '../../parts/why-button.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft } from '../../state/drafts.ts';
import { ledger, recordAll } from '../../state/open-journal.ts';
import { say } from '../../views/say.ts';
import { outWords } from '../../views/show-view.ts';
import { sourceWords } from '../../views/source-words.ts';
import { LastWeekDays } from './last-week-days.tsx';
import { lastWeekFacts } from './last-week-facts.ts';
import { LoadFields } from './load-fields.tsx';
import { LAST_WEEK_DRAFT, lastWeek, loadJump } from './last-week-state.ts';
import { NotPlanned } from './not-planned.tsx';
import { RehearsalSection } from './rehearsal-section.tsx';
import { jumpWords } from './stretches-ahead.tsx';

const problems = signal<readonly Problem[]>([]);

/** The last week day by day, what the scale will do, and what this tool does not plan. */
export function LastWeekScreen(): JSX.Element {
  const state = lastWeek.value;
  if (state === 'working')
    return (
      <Page title="Last week" back={pathTo('course')}>
        <Note>Working out where the body stands …</Note>
      </Page>
    );
  if (!state.ok)
    return (
      <Page title="Last week" back={pathTo('course')}>
        <EmptyState title={state.problem.message} words={state.problem.remedy} />
        <NotPlanned />
      </Page>
    );
  const now = state.value;
  return (
    <Page title="Last week" back={pathTo('course')} detail={`${outWords(now.show)} · ${now.show.name}`}>
      <Form onSubmit={() => void adopt(now)} problems={problems.value}>
        {!now.mayAdopt && (
          <Note>
            A look ahead from today's body. From three weeks out on it can be adopted; until then, rehearse
            it.
          </Note>
        )}
        <Columns wide="last">
          <div class="stack">
            <LoadFields now={now} />
            <ScaleSection now={now} />
            <RehearsalSection now={now} />
          </div>
          <div class="stack">
            <LastWeekDays now={now} />
            <Reasons now={now} />
          </div>
        </Columns>
        <NotPlanned />
        <MainAction now={now} />
      </Form>
    </Page>
  );
}

function ScaleSection({ now }: { readonly now: LastWeekNow }): JSX.Element {
  const state = loadJump.value;
  const words =
    now.load === undefined
      ? 'Without a load the scale goes on as before.'
      : state.status === 'working'
        ? 'Running the paths …'
        : state.outcome.ok
          ? jumpWords(state.outcome.value)
          : `${state.outcome.problem.message} ${state.outcome.problem.remedy}`;
  return (
    <Section title="What the scale will do">
      <p>{words}</p>
      <Note>The estimate knows of it: what is logged as eaten on these days is not read as fat.</Note>
    </Section>
  );
}

function Reasons({ now }: { readonly now: LastWeekNow }): JSX.Element {
  return (
    <Section
      title="Why so"
      action={
        <WhyButton
          why={() => ({
            title: 'What it rests on',
            sentences: [
              'Trials of carbohydrate loading in this sport and reviews of the last week; what they do not say is common practice and named so.',
            ],
            source: now.plan.sources.map(sourceWords),
          })}
        >
          Sources
        </WhyButton>
      }
    >
      <div class="stack">
        {now.plan.why.map((sentence) => (
          <p key={sentence}>{say(sentence)}</p>
        ))}
      </div>
    </Section>
  );
}

function MainAction({ now }: { readonly now: LastWeekNow }): JSX.Element | null {
  if (now.mayAdopt)
    return (
      <ActionBar>
        <Button kind={now.adopted ? 'plain' : 'next'} records wide submits>
          {now.adopted ? 'Adopt it anew' : 'Adopt this last week'}
        </Button>
      </ActionBar>
    );
  if (!now.rehearse) return null;
  return (
    <ActionBar>
      <Button kind="next" wide href={pathTo('course', 'rehearsal')}>
        Rehearse it
      </Button>
    </ActionBar>
  );
}

async function adopt(now: LastWeekNow): Promise<void> {
  if (!now.mayAdopt) return;
  const { facts, removing } = lastWeekFacts(ledger.peek(), now);
  const saved = await recordAll(facts, { says: `Last week before ${now.show.name} adopted`, removing });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(LAST_WEEK_DRAFT);
  go(pathTo('course', 'last-week'));
}
