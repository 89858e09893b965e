import type { JSX } from 'preact';
import type { AnalyteTrend } from '#core/health/panel/analyte-trend.ts';
import type { PanelResult } from '#core/health/panel/reading.ts';
import { trendOf } from '#core/cycle/blood-now.ts';
import { dateWords, dayAndMonth } from '#core/words/dates.ts';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Figure } from '../../parts/figure.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { Table } from '../../parts/table.tsx';
import { writeNumber } from '../../parts/write-number.ts';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { ledger } from '../../state/open-journal.ts';
import { health } from '../../views/health-view.ts';
import { sourceWords } from '../../views/source-words.ts';
import { flagWords, intervalWords, unitSign, valueWords } from './lab-words.ts';
import { readingOf } from './panel-view.ts';
import { decimalsOf, TrendChart } from './trend-chart.tsx';
import { UrgentCautions } from './urgent-cautions.tsx';
import { say } from '../../views/say.ts';

/** One analyte over all panels: drawn, as a table, and with what is known to move it. */
export function TrendScreen({ analyte }: { readonly analyte: string }): JSX.Element {
  const trend = trendOf(ledger.value, analyte, today.value);
  if (!trend)
    return (
      <Page title="Trend" back={pathTo('health')}>
        <EmptyState
          title="No panel has this value."
          words="Go back to Health and choose one that is there."
        />
      </Page>
    );
  const panel = health.value.blood.panels.find(({ drawn }) => drawn.date === trend.points.at(-1)?.date);
  const reading = panel && readingOf(panel.panel);
  const result = reading?.ok
    ? reading.value.results.find(({ read }) => read.known?.analyte.key === analyte)
    : undefined;
  const urgent = reading?.ok && result?.flag === 'seek care now' ? reading.value.cautions : [];
  return (
    <Page
      title={trend.name}
      back={panel ? pathTo('health', 'panel', panel.panel) : pathTo('health')}
      detail={`${trend.points.length} ${trend.points.length === 1 ? 'panel' : 'panels'}`}
    >
      <UrgentCautions cautions={urgent.filter(({ words }) => words.startsWith(trend.name))} />
      <Columns wide="first">
        <div class="stack">
          <TrendChart trend={trend} />
          <TrendTable trend={trend} />
        </div>
        {result ? <Newest result={result} /> : <Note>The newest panel cannot be read as it stands.</Note>}
      </Columns>
    </Page>
  );
}

function TrendTable({ trend }: { readonly trend: AnalyteTrend }): JSX.Element {
  const decimals = decimalsOf(trend.points);
  return (
    <Section title="Panel by panel">
      <Table
        caption={`${trend.name} over the panels`}
        captionHidden
        columns={[
          { key: 'date', label: 'Drawn' },
          { key: 'value', label: 'Value', unit: unitSign(trend.unit), numeric: true },
          { key: 'change', label: 'Change', numeric: true },
          { key: 'verdict', label: 'It is' },
        ]}
        rows={trend.points.toReversed().map(({ date, value, comparator, change, otherList }) => ({
          date: `${dayAndMonth(date)} ${date.slice(0, 4)}`,
          value: `${comparator ?? ''}${writeNumber(value, decimals, false)}`,
          change: change ? `${writeNumber(change.percent, 0, true)} %` : '',
          verdict: [
            ...(change ? [change.real ? 'a real change' : 'wandering'] : []),
            ...(otherList ? ['another interval list'] : []),
          ].join('; '),
        }))}
      />
      <Note>
        {trend.rcvPercent === undefined
          ? 'How much it wanders in one person is not known here, so changes are not judged.'
          : `A change counts from ${trend.rcvPercent.toFixed(0)} %, the reference change value: 1.41 × 1.96 × √(CVa² + CVi²), out of the method's and the person's own variation.`}
      </Note>
    </Section>
  );
}

function Newest({ result }: { readonly result: PanelResult }): JSX.Element {
  const { read, interval, flag, notes } = result;
  return (
    <Section title="The newest">
      <Figure
        value={valueWords(read)}
        unit={unitSign(read.unit)}
        size="large"
        label={read.name}
        labelHidden
        why={{
          title: read.name,
          sentences: [
            `Against the interval ${intervalWords(interval)}: ${flagWords(flag)}.`,
            interval?.own === true
              ? 'The interval is the laboratory’s own, which goes first.'
              : 'The laboratory gave no interval; this one is from the table here.',
            ...(read.known
              ? [
                  `In SI units: ${Number(read.known.si.toPrecision(4))} ${unitSign(read.known.analyte.unitSi)}.`,
                ]
              : []),
          ],
          inputs: [
            ...(read.loinc === undefined ? [] : [{ name: 'LOINC code', value: read.loinc }]),
            ...(read.known?.analyte.siPerUnit === undefined
              ? []
              : [
                  {
                    name: `Factor from ${unitSign(read.known.analyte.unit)} to ${unitSign(read.known.analyte.unitSi)}`,
                    value: String(Number(read.known.analyte.siPerUnit.toPrecision(5))),
                  },
                ]),
          ],
          source: [...(interval ? [interval.source] : []), sourceWords('jama-si')],
        }}
      />
      <p>{`Interval ${intervalWords(interval)}: ${flagWords(flag)}.`}</p>
      {notes.length > 0 && (
        <List label="What is known to move it">
          {notes.map(({ words, source }) => (
            <ListRow
              key={words}
              title={say(words)}
              {...(source !== undefined && { detail: sourceWords(source) })}
            />
          ))}
        </List>
      )}
      <Note>{`Drawn ${result.change ? `after the panel of ${dateWords(result.change.since)}` : 'as the first of its kind'}.`}</Note>
    </Section>
  );
}
