import type { JSX } from 'preact';
import type { BodyNow } from '#core/cycle/body-now.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { writeNumber } from '../../parts/write-number.ts';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { body, weighIns } from '../../views/body-view.ts';
import { withWeeksOut } from '../../views/show-view.ts';
import { massUnit } from '../../views/mass-units.ts';
import { Believed } from './believed.tsx';
import { JumpSection } from './jump-section.tsx';
import { MassSection } from './mass-section.tsx';
import { MeasureList } from './measure-list.tsx';
import { ToSettle } from './to-settle.tsx';

/** The scale against what the body is believed to weigh. */
export function BodyScreen(): JSX.Element {
  const { unit, shown } = massUnit.value;
  const last = weighIns.value.at(-1);
  const weighedToday = last?.day === today.value;
  const when = last && (weighedToday ? 'this morning' : `on ${dateWords(last.day)}`);
  return (
    <Page
      title="Body"
      detail={withWeeksOut(
        last ? `${writeNumber(shown(last.massKg), 1, false)} ${unit} ${when}` : 'no weigh-in yet',
      )}
    >
      <BodyParts />
      <ActionBar>
        <Button kind={weighedToday ? 'plain' : 'next'} wide href={pathTo('body', 'weigh')}>
          {weighedToday ? 'Weigh in again' : 'Weigh in'}
        </Button>
      </ActionBar>
    </Page>
  );
}

function BodyParts(): JSX.Element {
  const asked = body.value;
  if (asked.status === 'working') {
    return (
      <>
        <Note>Reading the log …</Note>
        <MeasureList />
      </>
    );
  }
  const { outcome } = asked;
  if (!outcome.ok) {
    return (
      <>
        <EmptyState title={outcome.problem.message} words={outcome.problem.remedy} />
        <MeasureList />
      </>
    );
  }
  return <Known now={outcome.value} />;
}

function Known({ now }: { readonly now: BodyNow }): JSX.Element {
  return (
    <>
      <ToSettle doubtful={now.doubtful} />
      <Believed now={now} />
      <Columns wide="first">
        <MassSection now={now} />
        <div class="stack">
          {now.jump && <JumpSection jump={now.jump} />}
          <MeasureList />
        </div>
      </Columns>
    </>
  );
}
