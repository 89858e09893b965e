import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { AfterwardsNow } from '#core/cycle/afterwards-now.ts';
import type { Problem } from '#core/problems/problem.ts';
import { dateWords, dayAndMonth, weeksOut } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Form } from '../../parts/form.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { ledger, recordAll } from '../../state/open-journal.ts';
import { say } from '../../views/say.ts';
import { newId } from '../../views/new-id.ts';
import { afterwardsFacts } from './afterwards-facts.ts';
import { afterwards, chosenPace, pace } from './afterwards-state.ts';
import { WayBackChart } from './way-back-chart.tsx';
import { WayBackMarkers } from './way-back-markers.tsx';
import { WayBackWeeks } from './way-back-weeks.tsx';

const problems = signal<readonly Problem[]>([]);

/** The way back after the show: energy up, the scale's rise foretold, what to watch, when the next season may begin. */
export function AfterwardsScreen(): JSX.Element {
  const state = afterwards.value;
  if (state === 'working')
    return (
      <Page title="Afterwards" back={pathTo('course')}>
        <Note>Working out where the body stands …</Note>
      </Page>
    );
  if (!state.ok)
    return (
      <Page title="Afterwards" back={pathTo('course')}>
        <EmptyState title={state.problem.message} words={state.problem.remedy} />
      </Page>
    );
  const now = state.value;
  return (
    <Page
      title="Afterwards"
      back={pathTo('course')}
      detail={`${now.show.name}, ${dayAndMonth(now.show.date)} · ${weeksOut(today.value, now.show.date)}`}
    >
      <Form onSubmit={() => void adopt(now)} problems={problems.value}>
        <Columns wide="first">
          <div class="stack">
            <Pace now={now} />
            <Section title="Where the scale may stand">
              {now.standing !== undefined && <p>{say(now.standing)}</p>}
              <WayBackChart now={now} />
              {now.plan.why.slice(1).map((sentence) => (
                <p key={sentence}>{say(sentence)}</p>
              ))}
            </Section>
            <WayBackWeeks now={now} />
          </div>
          <div class="stack">
            <WayBackMarkers now={now} />
            <NextSeason now={now} />
          </div>
        </Columns>
        <ActionBar>
          <Button
            kind={now.adopted && chosenPace.value === undefined ? 'plain' : 'next'}
            records
            wide
            submits
          >
            {now.adopted ? 'Adopt it anew' : 'Adopt this way back'}
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

function Pace({ now }: { readonly now: AfterwardsNow }): JSX.Element {
  return (
    <Section title="Energy up" detail={now.adopted && `adopted, ${now.adopted.pace}`}>
      <div class="stack">
        <ChoiceField
          label="How"
          layout="column"
          value={pace.value}
          options={[
            {
              value: 'at once',
              label: 'At once',
              detail: 'to balance in the first week, then a little above',
            },
            { value: 'in steps', label: 'In steps', detail: '150 kcal more each week' },
          ]}
          onValue={(value) => {
            chosenPace.value = value;
          }}
        />
        <p>{now.plan.why[0]}</p>
        {now.daysSince < 0 && (
          <Note>A look ahead from today's body; adopt it anew once the show is over.</Note>
        )}
      </div>
    </Section>
  );
}

function NextSeason({ now }: { readonly now: AfterwardsNow }): JSX.Element {
  const { soonest, why } = now.nextSeason;
  return (
    <Section title="The next season">
      <div class="stack">
        <p>{`Not before ${dateWords(soonest)} ${soonest.slice(0, 4)}.`}</p>
        {why.map((sentence) => (
          <Note key={sentence}>{say(sentence)}</Note>
        ))}
        <List label="The next season">
          <ListRow title="Set the next show" href={pathTo('course', 'show', 'new')} />
        </List>
      </div>
    </Section>
  );
}

async function adopt(now: AfterwardsNow): Promise<void> {
  const facts = afterwardsFacts(ledger.peek(), now, {
    pace: pace.peek(),
    today: today.peek(),
    event: newId('date'),
  });
  const saved = await recordAll(facts, { says: `Way back from ${now.show.name} adopted` });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  chosenPace.value = undefined;
  go(pathTo('course', 'afterwards'));
}
