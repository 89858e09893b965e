import type { JSX } from 'preact';
import type { CourseAsk } from '#core/cycle/course-ask.ts';
import type { CourseNow } from '#core/cycle/course-now.ts';
import { showOfWayBack } from '#core/cycle/afterwards-now.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Problem } from '#core/problems/problem.ts';
import { dayAndMonth, weeksOut } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { ledger } from '../../state/open-journal.ts';
import { checkInDue } from '../../views/check-in-view.ts';
import { course, courseQuestion } from '../../views/course-view.ts';
import { outWords } from '../../views/show-view.ts';
import { sourceWords } from '../../views/source-words.ts';
import { AheadSection } from './ahead-section.tsx';
import { CourseLinks, ShowLinks } from './course-links.tsx';
import { Landing } from './landing.tsx';
import { Proposal } from './proposal.tsx';
import { SeasonSection } from './season-section.tsx';
import { StretchesAhead } from './stretches-ahead.tsx';

/** Where the plan lands on the day of the show, and the smallest correction. */
export function CourseScreen(): JSX.Element {
  const asked = courseQuestion.value;
  if (!asked.ok) return <NoCourse problem={asked.problem} />;
  const { show } = asked.value;
  return (
    <Page title="Course" detail={`${outWords(show)} · ${show.name}, ${dayAndMonth(show.date)}`}>
      <CourseParts ask={asked.value} />
      <ActionBar>
        <Button kind={checkInDue.value ? 'next' : 'plain'} wide href={pathTo('course', 'check-in')}>
          {checkInDue.value ? 'Weekly check-in is due' : 'Weekly check-in'}
        </Button>
      </ActionBar>
    </Page>
  );
}

/** No show yet, no target yet, nothing weighed: what is lacking, and the way there. */
function NoCourse({ problem }: { readonly problem: Problem }): JSX.Element {
  const weighs = problem.code.startsWith('body/');
  const behind = problem.code === 'course/no-show' ? showOfWayBack(ledger.value, today.value) : undefined;
  if (behind) return <Behind show={behind} />;
  return (
    <Page title="Course" detail={weighs ? 'no weigh-in yet' : 'no show yet'}>
      <EmptyState
        title={problem.message}
        words={problem.remedy}
        action={
          weighs ? (
            <Button kind="next" href={pathTo('body', 'weigh')}>
              Weigh in
            </Button>
          ) : (
            <Button kind="next" href={pathTo('course', 'show')}>
              {problem.code === 'course/no-target-yet' ? 'Set the target' : 'Set a show'}
            </Button>
          )
        }
      />
      <ShowLinks />
    </Page>
  );
}

/** A show lies behind and none ahead: the way back comes first. */
function Behind({ show }: { readonly show: DataOf<'show-set'> }): JSX.Element {
  return (
    <Page title="Course" detail={weeksOut(today.value, show.date)}>
      <EmptyState
        title={`${show.name} lies behind you.`}
        words="The way back to eating enough comes first; the next show when the body has recovered."
        action={
          <Button kind="next" href={pathTo('course', 'afterwards')}>
            The way back
          </Button>
        }
      />
      <ShowLinks />
      <Section title="Ahead">
        <List label="Ahead">
          <ListRow title="Set the next show" href={pathTo('course', 'show', 'new')} />
        </List>
      </Section>
    </Page>
  );
}

function CourseParts({ ask }: { readonly ask: CourseAsk }): JSX.Element {
  const state = course.value;
  if (state.status === 'working') return <Note>Running the paths to the show …</Note>;
  const { outcome } = state;
  if (!outcome.ok)
    return (
      <>
        <Caution title={outcome.problem.message} words={outcome.problem.remedy} />
        <CourseLinks />
      </>
    );
  const now = outcome.value;
  return (
    <Columns wide="last">
      <div class="stack">
        <Landing ask={ask} now={now} />
        <Proposal now={now} />
        <Cautions now={now} />
      </div>
      <div class="stack">
        <AheadSection ask={ask} now={now} />
        {now.season && <SeasonSection season={now.season} />}
        {now.stretches.length > 0 && <StretchesAhead stretches={now.stretches} show={ask.show.show} />}
        <CourseLinks />
      </div>
    </Columns>
  );
}

function Cautions({ now }: { readonly now: CourseNow }): JSX.Element | null {
  const { cautions } = now.answer;
  if (cautions.length === 0) return null;
  return (
    <Section title="Cautions">
      <div class="stack">
        {cautions.map(({ limit, words, source }) => (
          <Caution key={limit + words} words={words} source={sourceWords(source)} />
        ))}
      </div>
    </Section>
  );
}
