import type { JSX } from 'preact';
import type { PanelReading } from '#core/health/panel/read-panel.ts';
import type { PanelResult } from '#core/health/panel/reading.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Facts } from '../../parts/facts.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { sourceWords } from '../../views/source-words.ts';
import { say } from '../../views/say.ts';
import { DerivedValues } from './derived-values.tsx';
import { readingOf } from './panel-view.ts';
import { ResultRows } from './result-rows.tsx';
import { UrgentCautions } from './urgent-cautions.tsx';

/** A panel read with care: what needs care now first, then what is out of its interval, then the rest. */
export function PanelScreen({ panel }: { readonly panel: string }): JSX.Element {
  const outcome = readingOf(panel);
  if (!outcome.ok)
    return (
      <Page title="Blood panel" back={pathTo('health')}>
        <EmptyState title={outcome.problem.message} words={outcome.problem.remedy} />
        <div class="row">
          <Button href={pathTo('health', 'panel', panel, 'correct')}>Correct this panel</Button>
        </div>
      </Page>
    );
  const reading = outcome.value;
  const { request } = reading;
  return (
    <Page
      title={`Panel of ${dateWords(request.drawn.date)}`}
      detail={request.laboratory}
      back={pathTo('health')}
    >
      <UrgentCautions cautions={reading.cautions} />
      <Columns wide="last">
        <Beware reading={reading} />
        <div class="stack">
          <Results reading={reading} />
          <DerivedValues reading={reading} />
          <State reading={reading} />
        </div>
      </Columns>
      <div class="row">
        <Button kind="quiet" href={pathTo('health', 'panel', panel, 'correct')}>
          Correct this panel
        </Button>
      </div>
      <ActionBar>
        <Button kind="next" wide href={pathTo('health', 'sheet', panel)}>
          One page for the physician
        </Button>
      </ActionBar>
    </Page>
  );
}

function Results({ reading: { results } }: { readonly reading: PanelReading }): JSX.Element {
  const out = ({ flag }: PanelResult) => flag === 'low' || flag === 'high';
  const groups = [
    { title: 'Needs care now', rows: results.filter(({ flag }) => flag === 'seek care now') },
    { title: 'Out of the interval', rows: results.filter(out) },
    { title: 'In the interval', rows: results.filter(({ flag }) => flag === 'in') },
    { title: 'Kept, not judged', rows: results.filter(({ flag }) => flag === undefined) },
  ];
  return (
    <>
      {groups
        .filter(({ rows }) => rows.length > 0)
        .map(({ title, rows }) => (
          <Section key={title} title={title} detail={`${rows.length} of ${results.length}`}>
            <ResultRows results={rows} />
          </Section>
        ))}
    </>
  );
}

function Beware({ reading: { cautions } }: { readonly reading: PanelReading }): JSX.Element {
  const calm = cautions.filter(({ urgent, code }) => !urgent && code !== 'health/withheld');
  const advice = calm.filter(({ code }) => code === 'health/not-medical-advice');
  return (
    <Section title="Before you read anything into it">
      <div class="stack">
        {calm
          .filter((caution) => !advice.includes(caution))
          .map(({ words, source }) => (
            <Caution
              key={words}
              words={say(words)}
              {...(source !== undefined && { source: sourceWords(source) })}
            />
          ))}
        {advice.map(({ words }) => (
          <Note key={words}>{say(words)}</Note>
        ))}
      </div>
    </Section>
  );
}

function State({ reading: { request } }: { readonly reading: PanelReading }): JSX.Element {
  const { drawn, taking, diet } = request;
  const hours = (value: number | undefined) => (value === undefined ? 'not known' : `${value} h`);
  const taken = taking.map((one) => (typeof one === 'string' ? one : one.substance));
  return (
    <Section title="How it was drawn">
      <Facts
        items={[
          {
            name: 'Drawn',
            value: `${dateWords(drawn.date)}${drawn.time === undefined ? ', time not known' : ` at ${drawn.time}`}`,
          },
          { name: 'Fasted', value: hours(drawn.fastedHours) },
          { name: 'Since hard training', value: hours(drawn.hoursSinceHardTraining) },
          {
            name: 'Energy',
            value:
              diet?.deficitKcalPerDay === undefined
                ? 'not known'
                : `${Math.abs(diet.deficitKcalPerDay)} kcal a day ${diet.deficitKcalPerDay >= 0 ? 'below' : 'above'} maintenance`,
          },
          {
            name: 'Protein',
            value: diet?.proteinGPerKg === undefined ? 'not known' : `${diet.proteinGPerKg} g/kg a day`,
          },
          {
            name: 'Taken in the week before',
            value: taken.length === 0 ? 'nothing noted' : taken.join(', '),
          },
        ]}
      />
    </Section>
  );
}
