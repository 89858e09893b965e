import { signal, useSignal } from '@preact/signals';
import type { JSX, TargetedKeyboardEvent } from 'preact';
import type { LabValue } from '#core/journal/kinds/lab-value.ts';
import { analyteByName } from '#core/health/panel/find-analyte.ts';
import {
  athleteAt,
  hoursSinceTraining,
  panelsIn,
  takingBefore,
} from '#core/health/panel/panel-from-journal.ts';
import { analyteNames } from '#core/health/panel/analyte-names.ts';
import type { PanelCaution } from '#core/health/panel/reading.ts';
import type { Problem } from '#core/problems/problem.ts';
import { formatClock } from '#core/units/clock.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { ClockField } from '../../parts/clock-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { SearchField } from '../../parts/search-field.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { correct, ledger, record } from '../../state/open-journal.ts';
import { athlete } from '../../views/athlete-view.ts';
import { newId } from '../../views/new-id.ts';
import { unitSign } from './lab-words.ts';
import {
  draftOfPanel,
  emptyPanel,
  lineFor,
  panelDraft,
  readPanelDraft,
  sameAs,
  urgentIn,
  type PanelDraft,
  type ValueDraft,
} from './panel-draft.ts';
import { PanelValueFields } from './panel-value-fields.tsx';
import { UrgentCautions } from './urgent-cautions.tsx';

const problems = signal<readonly Problem[]>([]);

/** Found in a panel that could not be kept yet. */
const urgent = signal<readonly PanelCaution[]>([]);

interface FormProps {
  readonly typed: PanelDraft;
  readonly change: (part: Partial<PanelDraft>) => void;
}

/** A panel as the laboratory printed it; with an id, one that is corrected. */
export function PanelForm({ panel }: { readonly panel: string | undefined }): JSX.Element {
  const known = panelsIn(ledger.value).find((one) => one.panel === panel);
  const last = panelsIn(ledger.value).at(-1);
  const key = `health/panel/${panel ?? 'new'}`;
  const typed = draft(
    key,
    panelDraft,
    known ? draftOfPanel(known) : emptyPanel(today.value, last?.laboratory),
  );
  const props: FormProps = {
    typed: typed.value,
    change: (part) => (typed.value = { ...typed.value, ...part }),
  };
  return (
    <Page
      title={known ? `Panel of ${dayAndMonth(known.drawn.date)}` : 'A blood panel'}
      back={known ? pathTo('health', 'panel', known.panel) : pathTo('health')}
    >
      {problems.value.length > 0 && <UrgentCautions cautions={urgent.value} />}
      <Form onSubmit={() => void keep(typed.value, key, panel)} problems={problems.value}>
        <Columns wide="last">
          <Section title="When, and in what state" detail="what is not known stays empty">
            <Draw {...props} />
          </Section>
          <Section title="Values" detail="in the laboratory's own units and intervals">
            <Values {...props} />
          </Section>
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this panel
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

function Draw({ typed, change }: FormProps): JSX.Element {
  const time = typed.atMinutes === undefined ? {} : { time: formatClock(typed.atMinutes) };
  const logged = hoursSinceTraining(ledger.value, { date: typed.date, ...time });
  return (
    <div class="stack">
      <DateField label="Drawn on" value={typed.date} max={today.value} onValue={(date) => change({ date })} />
      <ClockField
        label="At"
        value={typed.atMinutes}
        onValue={(atMinutes) => change({ atMinutes })}
        optional
      />
      <TextField
        label="Laboratory"
        value={typed.laboratory}
        onValue={(laboratory) => change({ laboratory })}
        optional
      />
      <NumberField
        label="Fasted for"
        unit="h"
        min={0}
        max={240}
        value={typed.fastedHours}
        onValue={(fastedHours) => change({ fastedHours })}
        optional
      />
      <NumberField
        label="Since hard training"
        unit="h"
        min={0}
        value={typed.hoursSinceHardTraining}
        onValue={(hoursSinceHardTraining) => change({ hoursSinceHardTraining })}
        hint={
          logged === undefined
            ? 'the training log does not say'
            : `by the training log ${logged} h; leave it empty to use that`
        }
        optional
      />
      <CheckField
        label="The laboratory says cells had burst in the tube"
        detail="haemolysed sample"
        checked={typed.haemolysed}
        onChecked={(haemolysed) => change({ haemolysed })}
      />
      <Note>What was taken in the seven days before is read from the journal.</Note>
    </div>
  );
}

const SHOWN = 8;

function Values({ typed, change }: FormProps): JSX.Element {
  const query = useSignal('');
  const sex = athlete.value?.sex ?? 'female';
  const last = panelsIn(ledger.value).at(-1);
  const add = (names: readonly string[]): void => {
    const lines = names
      .filter(
        (name) => !typed.values.some((line) => line.name === (analyteByName(name)?.analyte.name ?? name)),
      )
      .map((name) => lineFor(name, lastValueOf(name)));
    change({ values: [...typed.values, ...lines] });
    query.value = '';
  };
  const set = (place: number, part: Partial<ValueDraft>): void =>
    change({ values: typed.values.map((line, at) => (at === place ? { ...line, ...part } : line)) });
  const wanted = query.value.trim();
  const found = wanted === '' ? [] : analyteNames(wanted, SHOWN);
  return (
    <div class="stack">
      {last && typed.values.length === 0 && (
        <Button onPress={() => add(last.values.map(({ name, loinc }) => name ?? loinc ?? ''))}>
          {`The list of ${dayAndMonth(last.drawn.date)} again, ${last.values.length} values`}
        </Button>
      )}
      <div class="stack" onKeyDown={toNextValue}>
        {typed.values.map((line, place) => (
          <PanelValueFields
            key={place}
            line={line}
            place={place}
            sex={sex}
            last={lastValueOf(line.name)}
            set={(part) => set(place, part)}
            drop={() => change({ values: typed.values.filter((_, at) => at !== place) })}
          />
        ))}
      </div>
      <SearchField
        label="Add what was measured"
        hint="as the report names it: ALT, ferritin, free T3"
        query={query.value}
        onQuery={(text) => (query.value = text)}
        results={[
          ...found.map(({ name, unit }) => ({ id: name, title: name, detail: unitSign(unit) })),
          ...(wanted !== '' && !analyteByName(wanted)
            ? [{ id: wanted, title: `"${wanted}", as printed`, detail: 'not in the table: kept, not judged' }]
            : []),
        ]}
        onChoose={(name) => add([name])}
      />
    </div>
  );
}

/** Enter goes on to the next value: a report is copied from top to bottom without looking up. */
function toNextValue(event: TargetedKeyboardEvent<HTMLDivElement>): void {
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
  event.preventDefault();
  const values = [...event.currentTarget.querySelectorAll<HTMLInputElement>('.lab-line-value input')];
  values[values.indexOf(event.target) + 1]?.focus();
}

/** How the laboratory printed it last, newest panel first. */
function lastValueOf(name: string): LabValue | undefined {
  const wanted = analyteByName(name)?.analyte;
  return panelsIn(ledger.peek())
    .toReversed()
    .flatMap(({ values }) => values)
    .find((value) => (wanted ? analyteByName(value.name ?? '')?.analyte === wanted : value.name === name));
}

async function keep(typed: PanelDraft, key: string, panel: string | undefined): Promise<void> {
  const sex = athlete.peek()?.sex;
  if (sex === undefined) {
    problems.value = [nobody];
    return;
  }
  const kept = panelsIn(ledger.peek());
  const known = kept.find((one) => one.panel === panel);
  const drawn = {
    date: typed.date,
    ...(typed.atMinutes !== undefined && { time: formatClock(typed.atMinutes) }),
  };
  const read = readPanelDraft(typed, sex, {
    panel: known?.panel ?? newId('panel'),
    taking: known?.taking ?? takingBefore(ledger.peek(), drawn),
    origin: known?.origin ?? 'typed',
    ...(known?.report !== undefined && { report: known.report }),
  });
  const twin = read.panel && sameAs(read.panel, kept);
  problems.value = twin ? [enteredAlready(twin.drawn.date)] : read.problems;
  const whose = athleteAt(ledger.peek(), typed.date);
  urgent.value = whose ? urgentIn(typed, whose) : [];
  if (!read.panel || twin) return;
  const options = {
    day: typed.date,
    ...(typed.atMinutes !== undefined && { clock: typed.atMinutes }),
    says: `Panel of ${dayAndMonth(typed.date)} kept`,
  };
  const entry = ledger
    .peek()
    .of('blood-drawn')
    .findLast(({ data }) => data.panel === panel)?.entry.id;
  const saved = await (entry === undefined
    ? record('blood-drawn', read.panel, options)
    : correct(entry, read.panel, options));
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(pathTo('health', 'panel', read.panel.panel));
}

const nobody: Problem = {
  code: 'health/nobody',
  path: 'athlete',
  message: 'The journal does not say yet whose blood it is.',
  remedy: 'Fill in the first start: intervals go by sex and age. What is typed here stays.',
};

function enteredAlready(date: string): Problem {
  return {
    code: 'health/duplicate-panel',
    path: 'values',
    message: `The panel of ${date} is in the journal already, with these very values.`,
    remedy: 'Change what differs, or leave this form.',
  };
}
