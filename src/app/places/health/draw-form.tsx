import { signal, useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { regimensForDraw } from '#core/cycle/draw-now.ts';
import { analyteNames } from '#core/health/panel/analyte-names.ts';
import type { PlannedDraw } from '#core/health/draw/draw-plan.ts';
import { panelsIn } from '#core/health/panel/panel-from-journal.ts';
import type { Problem } from '#core/problems/problem.ts';
import { addDays } from '#core/units/civil-date.ts';
import { parseClock } from '#core/units/clock.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { ClockField } from '../../parts/clock-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Form } from '../../parts/form.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { SearchField } from '../../parts/search-field.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { ledger, recordAll } from '../../state/open-journal.ts';
import { problemAt } from '../../views/problem-at.ts';
import { newId } from '../../views/new-id.ts';
import { draftOfDraw, drawDraft, readDrawDraft, type DrawDraft } from './draw-draft.ts';

const problems = signal<readonly Problem[]>([]);

/** Plans a draw, or moves one: pauses go into the regimens at once, and undo takes back all of it. */
export function DrawForm({ draw }: { readonly draw: PlannedDraw | undefined }): JSX.Element {
  const last = panelsIn(ledger.value).at(-1);
  const key = `health/draw/${draw?.draw ?? 'new'}`;
  const at = last?.drawn.time === undefined ? undefined : parseClock(last.drawn.time);
  const typed = draft(
    key,
    drawDraft,
    draw
      ? draftOfDraw(draw)
      : {
          date: addDays(today.value, 10),
          ...(at === undefined ? {} : { atMinutes: at }),
          laboratory: last?.laboratory ?? '',
          analytes: [],
          fasting: true,
        },
  );
  const change = (part: Partial<DrawDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  return (
    <Page
      title={draw ? 'Move the draw' : 'Plan a blood draw'}
      back={draw ? pathTo('health', 'draw') : pathTo('health')}
    >
      <Form onSubmit={() => void keep(typed.value, key, draw)} problems={problems.value}>
        <Columns wide="even">
          <WhenAndWhere typed={typed.value} change={change} />
          <Section title="What is to be measured" detail="empty: everything is guarded">
            <Wanted typed={typed.value} change={change} />
          </Section>
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits>
            {draw ? 'Keep the change' : 'Plan this draw'}
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface PartProps {
  readonly typed: DrawDraft;
  readonly change: (part: Partial<DrawDraft>) => void;
}

function WhenAndWhere({ typed, change }: PartProps): JSX.Element {
  const { date, atMinutes, laboratory, fasting } = typed;
  return (
    <Section title="When and where" detail="a week ahead gives muscle time to settle">
      <div class="stack">
        <DateField
          label="Draw on"
          value={date}
          min={today.value}
          onValue={(day) => change({ date: day })}
          problem={problemAt(problems.value, 'date')}
        />
        <ClockField
          label="At"
          value={atMinutes}
          onValue={(minutes) => change({ atMinutes: minutes })}
          problem={problemAt(problems.value, 'atMinutes')}
          hint="in the morning, the same hour as last time"
        />
        <TextField
          label="Laboratory"
          value={laboratory}
          onValue={(text) => change({ laboratory: text })}
          optional
        />
        <CheckField
          label="Fasting"
          detail="12 h without food, water is free"
          checked={fasting}
          onChecked={(on) => change({ fasting: on })}
        />
      </div>
    </Section>
  );
}

const SHOWN = 6;

function Wanted({ typed, change }: PartProps): JSX.Element {
  const query = useSignal('');
  const last = panelsIn(ledger.value).at(-1);
  const add = (names: readonly string[]): void => {
    change({ analytes: [...new Set([...typed.analytes, ...names])] });
    query.value = '';
  };
  const wanted = query.value.trim();
  return (
    <div class="stack">
      {last && typed.analytes.length === 0 && (
        <Button onPress={() => add(last.values.flatMap(({ name }) => name ?? []))}>
          {`The list of ${dayAndMonth(last.drawn.date)} again`}
        </Button>
      )}
      <List label="To be measured">
        {typed.analytes.map((name) => (
          <ListRow
            key={name}
            title={name}
            figure={
              <Button
                kind="quiet"
                label={`Take off ${name}`}
                onPress={() => change({ analytes: typed.analytes.filter((other) => other !== name) })}
              >
                Take off
              </Button>
            }
          />
        ))}
      </List>
      <SearchField
        label="Add a value"
        query={query.value}
        onQuery={(text) => (query.value = text)}
        results={(wanted === '' ? [] : analyteNames(wanted, SHOWN)).map(({ name }) => ({
          id: name,
          title: name,
        }))}
        onChoose={(name) => add([name])}
        nothing="No value by that name."
      />
      <Note>Ask for cystatin C beside creatinine where creatine is taken.</Note>
    </div>
  );
}

async function keep(typed: DrawDraft, key: string, draw: PlannedDraw | undefined): Promise<void> {
  const reading = readDrawDraft(typed, draw?.draw ?? newId('draw'), today.peek());
  problems.value = reading.ok ? [] : [reading.problem];
  if (!reading.ok) return;
  const regimens = regimensForDraw(ledger.peek(), reading.value, today.peek(), draw?.date);
  const pauses =
    regimens.length === 0
      ? ''
      : `, ${regimens.length} ${regimens.length === 1 ? 'regimen' : 'regimens'} paused for it`;
  const saved = await recordAll(
    [
      { kind: 'draw-planned', data: reading.value },
      ...regimens.map((data) => ({ kind: 'regimen-set', data }) as const),
    ],
    { says: `Draw planned for ${dayAndMonth(typed.date)}${pauses}` },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(pathTo('health', 'draw'));
}
