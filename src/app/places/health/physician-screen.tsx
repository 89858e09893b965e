import type { JSX } from 'preact';
import { circumstancesOf } from '#core/cycle/physician-now.ts';
import { physicianSheet, type PhysicianSheet } from '#core/health/draw/physician-sheet.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { Table } from '../../parts/table.tsx';
import { PrintButton } from '../../print/print-button.tsx';
import { PrintSheet } from '../../print/print-sheet.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { ledger } from '../../state/open-journal.ts';
import { athlete } from '../../views/athlete-view.ts';
import { unitSign } from './lab-words.ts';
import { readingOf } from './panel-view.ts';
import './physician-screen.css';

/** One page to take along: nothing on it needs this program to be understood. */
export function PhysicianScreen({ panel }: { readonly panel: string }): JSX.Element {
  const reading = readingOf(panel);
  return (
    <Page title="For the physician" back={pathTo('health', 'panel', panel)}>
      {reading.ok ? (
        <Sheet
          sheet={physicianSheet(
            reading.value,
            circumstancesOf(ledger.value, reading.value.request.drawn.date),
          )}
          whose={`${athlete.value?.name ?? 'The athlete'}, ${reading.value.request.athlete.sex}, ${reading.value.request.athlete.age} years`}
        />
      ) : (
        <EmptyState title={reading.problem.message} words={reading.problem.remedy} />
      )}
    </Page>
  );
}

function Sheet({ sheet, whose }: { readonly sheet: PhysicianSheet; readonly whose: string }): JSX.Element {
  return (
    <>
      <div class="row">
        <PrintButton>Print, or save as PDF</PrintButton>
      </div>
      <PrintSheet title={sheet.title} date={today.value} version={whose}>
        <div class="physician-sheet">
          {sheet.urgent.map((words) => (
            <p key={words} class="physician-urgent">
              {words}
            </p>
          ))}
          <p>{sheet.drawn.join('; ')}.</p>
          <Values sheet={sheet} />
          <div class="physician-columns">
            <div class="stack">
              <Lines title="Worked out from these" lines={sheet.derived} />
              <Lines title="Taken in the week before" lines={sheet.taken} />
            </div>
            <Lines title="Training and how it felt" lines={sheet.training} />
          </div>
          <Lines title="Questions" lines={sheet.questions} />
          <Lines title="To mind when reading" lines={sheet.cautions} />
          <p class="soft">* no interval of the laboratory was given; this one is from a published table.</p>
        </div>
      </PrintSheet>
    </>
  );
}

function Values({ sheet }: { readonly sheet: PhysicianSheet }): JSX.Element {
  return (
    <Table
      caption="Values"
      captionHidden
      columns={[
        { key: 'name', label: 'Value' },
        { key: 'result', label: 'Result', numeric: true },
        { key: 'interval', label: 'Interval', numeric: true },
        { key: 'flag', label: 'Flag' },
        { key: 'before', label: 'Before', numeric: true },
        { key: 'change', label: 'Change' },
      ]}
      rows={sheet.rows.map((row) => ({
        name: row.name,
        result: `${row.value} ${unitSign(row.unit)}`,
        interval: row.interval,
        flag: row.flag,
        before: row.before.map(({ date, value }) => `${value} (${dayAndMonth(date)})`).join(', '),
        change: row.change,
      }))}
    />
  );
}

function Lines({
  title,
  lines,
}: {
  readonly title: string;
  readonly lines: readonly string[];
}): JSX.Element | null {
  if (lines.length === 0) return null;
  return (
    <section>
      <h3>{title}</h3>
      <ul class="physician-lines">
        {lines.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </section>
  );
}
