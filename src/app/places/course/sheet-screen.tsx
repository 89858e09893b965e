import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import type { CourseAsk } from '#core/cycle/course-ask.ts';
import type { CourseNow } from '#core/cycle/course-now.ts';
import { weekNow } from '#core/cycle/week-now.ts';
import type { Problem } from '#core/problems/problem.ts';
import { dateWords, dayAndMonth } from '#core/words/dates.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Facts } from '../../parts/facts.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { PrintButton } from '../../print/print-button.tsx';
import { PrintSheet } from '../../print/print-sheet.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { ledger } from '../../state/open-journal.ts';
import { athlete } from '../../views/athlete-view.ts';
import { lastCheckIn, weekStrength } from '../../views/check-in-view.ts';
import { course, courseQuestion } from '../../views/course-view.ts';
import { massUnit } from '../../views/mass-units.ts';
import { outWords } from '../../views/show-view.ts';
import { say } from '../../views/say.ts';
import { chanceWords, VERDICTS, moveWords } from './course-words.ts';
import { FanChart } from './fan-chart.tsx';
import { pictureOf } from './save-picture.ts';
import './sheet-screen.css';
import { WeekTable } from './week-table.tsx';

/** One page to print or to send to a coach: the week, the course, and what was decided. */
export function SheetScreen(): JSX.Element {
  const [ask, state] = [courseQuestion.value, course.value];
  const problem = ask.ok ? undefined : ask.problem;
  return (
    <Page title="Check-in sheet" back={pathTo('course')}>
      {problem ? (
        <EmptyState title={problem.message} words={problem.remedy} />
      ) : state.status === 'working' || !ask.ok ? (
        <Note>Gathering the week …</Note>
      ) : state.outcome.ok ? (
        <Sheet ask={ask.value} now={state.outcome.value} />
      ) : (
        <EmptyState title={state.outcome.problem.message} words={state.outcome.problem.remedy} />
      )}
    </Page>
  );
}

function Sheet({ ask, now }: { readonly ask: CourseAsk; readonly now: CourseNow }): JSX.Element {
  const closed = ledger.value.latest('check-in-closed');
  const week = weekNow(
    ask,
    now,
    closed?.data.answers ?? {},
    lastCheckIn.value?.data.answers,
    weekStrength.value,
  );
  const name = athlete.value?.name ?? 'Check-in';
  const chart = useRef<HTMLDivElement>(null);
  const problem = useSignal<Problem | undefined>(undefined);
  const save = async (): Promise<void> => {
    const drawing = chart.current?.querySelector<SVGSVGElement>('svg.plot-drawing');
    if (!drawing) return;
    const caption = (part: string) => chart.current?.querySelector(part)?.textContent ?? '';
    const picture = await pictureOf(drawing, [
      `${caption('.plot-title')}, ${ask.today}`,
      caption('.plot-sentence'),
      'Solid was, dashed is the plan, dotted the course as laid; the band holds 9 of 10.',
    ]);
    problem.value = picture.ok ? undefined : picture.problem;
    if (picture.ok) hand(`course-${ask.today}.png`, picture.value);
  };
  return (
    <>
      <div class="row">
        <PrintButton>Print, or save as PDF</PrintButton>
        <Button onPress={() => void save()}>Save the chart as a picture</Button>
      </div>
      {problem.value && <Caution title={problem.value.message} words={problem.value.remedy} />}
      <PrintSheet
        title={`${name}, ${outWords(ask.show)}`}
        date={today.value}
        version={`${ask.show.name}, ${dayAndMonth(ask.show.date)}`}
      >
        <div class="check-sheet">
          <WeekTable evidence={week.evidence} />
          <Facts items={courseFacts(ask, now)} />
          <div ref={chart}>
            <FanChart
              ask={ask}
              now={now}
              quantity={ask.target.bodyFatPercent ? 'bodyFatPercent' : 'massKg'}
            />
          </div>
          <div>
            <h3>What the week says</h3>
            {week.evidence.words.map((sentence) => (
              <p key={sentence}>{say(sentence)}</p>
            ))}
          </div>
          <Decisions />
        </div>
      </PrintSheet>
    </>
  );
}

function courseFacts({ target }: CourseAsk, { answer }: CourseNow): { name: string; value: string }[] {
  const { unit, shown } = massUnit.value;
  const { bodyFatPercent, massKg } = answer.arrival;
  const range = (low: number, high: number, of: string) => `${low.toFixed(1)} to ${high.toFixed(1)} ${of}`;
  const bounds = [
    ...(target.bodyFatPercent ? [`at most ${target.bodyFatPercent.max} % body fat`] : []),
    ...(target.massKg?.max === undefined ? [] : [`at most ${shown(target.massKg.max).toFixed(1)} ${unit}`]),
    ...(target.massKg?.min === undefined ? [] : [`at least ${shown(target.massKg.min).toFixed(1)} ${unit}`]),
  ];
  return [
    { name: 'Target', value: bounds.join(', ') },
    {
      name: 'Lands at',
      value: `${bodyFatPercent.mean.toFixed(1)} % (${range(bodyFatPercent.q05, bodyFatPercent.q95, '%')})`,
    },
    {
      name: 'Body mass then',
      value: `${shown(massKg.mean).toFixed(1)} ${unit} (${range(shown(massKg.q05), shown(massKg.q95), unit)})`,
    },
    { name: 'Chance', value: chanceWords(answer.probability) },
    { name: 'Verdict', value: VERDICTS[answer.verdict].title },
  ];
}

/** The last decisions with their reasons, the newest first. */
const SHOWN = 4;

function Decisions(): JSX.Element {
  const checkIns = ledger.value.of('check-in-closed').map((fact) => ({
    day: fact.day,
    title: fact.data.decision,
    why: fact.data.evidence.at(-1) ?? '',
  }));
  const corrections = ledger.value.of('correction-accepted').map((fact) => ({
    day: fact.day,
    title: moveWords(fact.data),
    why: fact.data.why[0] ?? '',
  }));
  const decided = [...checkIns, ...corrections].sort((a, b) => (a.day < b.day ? 1 : -1)).slice(0, SHOWN);
  return (
    <div>
      <h3>Decided</h3>
      {decided.length === 0 && <p>Nothing has been decided yet.</p>}
      {decided.map(({ day, title, why }) => (
        <p key={`${day} ${title}`}>
          <strong>{`${dateWords(day)}: ${title}.`}</strong>
          {` ${say(why)}`}
        </p>
      ))}
    </div>
  );
}

/** Hands a picture to the browser as a file to save. */
function hand(name: string, picture: Blob): void {
  const url = URL.createObjectURL(picture);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The click has started the download; the address may go once the browser has read it.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
