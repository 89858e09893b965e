import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { nameUuid } from '#core/health/fhir/name-uuid.ts';
import { takingBefore } from '#core/health/panel/panel-from-journal.ts';
import type { Problem } from '#core/problems/problem.ts';
import { formatClock } from '#core/units/clock.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { FileField } from '../../parts/file-field.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { Table } from '../../parts/table.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { ledger, recordAll, type NewFact } from '../../state/open-journal.ts';
import { athlete } from '../../views/athlete-view.ts';
import {
  draftOfFhir,
  fhirDraft,
  noFile,
  withoutLine,
  type FhirDraft,
  type FoundPanel as Panel,
} from './fhir-draft.ts';
import { intervalWords, unitSign } from './lab-words.ts';
import { readPanelDraft } from './panel-draft.ts';
import { PanelValueFields } from './panel-value-fields.tsx';

const DRAFT = 'health/fhir';
const problems = signal<readonly Problem[]>([]);

/** Results as a portal or a laboratory exports them: looked over, completed, then taken in. */
export function FhirScreen(): JSX.Element {
  const typed = draft(DRAFT, fhirDraft, noFile);
  const read = async (file: File): Promise<void> => {
    const outcome = draftOfFhir(await file.text(), file.name, ledger.peek(), sexOf());
    problems.value = outcome.ok ? [] : [outcome.problem];
    if (outcome.ok) typed.value = outcome.value;
  };
  const held = typed.value;
  const nothing = held.file !== '' && held.panels.length + held.weights.length === 0;
  return (
    <Page title="Results from a file" back={pathTo('health')}>
      <Form onSubmit={() => void take(held)} problems={problems.value}>
        <div class="stack">
          <FileField
            label="A FHIR file"
            hint="Bundle, DiagnosticReport or Observation (HL7 FHIR R4), as patient portals export laboratory results"
            accept=".json,application/fhir+json,application/json"
            onFile={(file) => void read(file)}
          />
          {nothing && (
            <EmptyState
              title={
                held.known > 0
                  ? 'All of it is in the journal already.'
                  : 'The file holds no laboratory result.'
              }
              words={`"${held.file}" adds nothing.`}
            />
          )}
          <Found held={held} change={(part) => (typed.value = { ...held, ...part })} />
        </div>
        {held.panels.length + held.weights.length > 0 && (
          <ActionBar>
            <Button kind="next" records wide submits>
              {`Take in ${counted(held.panels.length, 'panel')}`}
            </Button>
          </ActionBar>
        )}
      </Form>
    </Page>
  );
}

interface FoundProps {
  readonly held: FhirDraft;
  readonly change: (part: Partial<FhirDraft>) => void;
}

function Found({ held, change }: FoundProps): JSX.Element {
  return (
    <>
      {held.problems.map(({ path, message, remedy }) => (
        <Caution key={path + message} title={message} words={`${remedy} (${path})`} />
      ))}
      {held.known > 0 && (
        <Note>{`${counted(held.known, 'panel or weight', 'panels and weights')} of the file are here already and stay as they are.`}</Note>
      )}
      {held.panels.map((panel, place) => (
        <FoundPanel
          key={place}
          panel={panel}
          set={(next) => change({ panels: held.panels.map((old, at) => (at === place ? next : old)) })}
          drop={() => change({ panels: held.panels.filter((_, at) => at !== place) })}
        />
      ))}
      {held.weights.length > 0 && (
        <CheckField
          label={`Take in ${counted(held.weights.length, 'weight')} too`}
          detail="they stand among your weigh-ins as another scale's"
          checked={held.withWeights}
          onChecked={(withWeights) => change({ withWeights })}
        />
      )}
    </>
  );
}

interface FoundPanelProps {
  readonly panel: Panel;
  readonly set: (panel: Panel) => void;
  readonly drop: () => void;
}

function FoundPanel({ panel, set, drop }: FoundPanelProps): JSX.Element {
  const { asked } = panel;
  const at = panel.atMinutes === undefined ? '' : ` at ${formatClock(panel.atMinutes)}`;
  return (
    <Section
      title={`Drawn ${dateWords(panel.date)}${at}`}
      detail={panel.laboratory}
      action={
        <Button kind="quiet" onPress={drop}>
          Leave it out
        </Button>
      }
    >
      {asked.length > 0 && (
        <Note>{`${counted(asked.length, 'value')} could not be read as the file has it. Complete it here, or take it off; the file itself is not changed.`}</Note>
      )}
      <div class="stack">
        {asked.map((place) => {
          const line = panel.values[place];
          return (
            line && (
              <PanelValueFields
                key={place}
                line={line}
                place={place}
                sex={sexOf()}
                set={(part) =>
                  set({
                    ...panel,
                    values: panel.values.map((old, k) => (k === place ? { ...old, ...part } : old)),
                  })
                }
                drop={() => set(withoutLine(panel, place))}
              />
            )
          );
        })}
      </div>
      <Table
        caption="Values of the file"
        captionHidden
        columns={[
          { key: 'name', label: 'Value' },
          { key: 'value', label: 'Result', numeric: true },
          { key: 'interval', label: 'Interval', numeric: true },
        ]}
        rows={panel.values
          .filter((_, place) => !asked.includes(place))
          .map((line) => ({
            name: line.name,
            value: `${line.text} ${unitSign(line.unit)}`,
            interval:
              line.low === undefined && line.high === undefined
                ? 'none given'
                : intervalWords({
                    ...(line.low === undefined ? {} : { low: line.low }),
                    ...(line.high === undefined ? {} : { high: line.high }),
                  }),
          }))}
      />
    </Section>
  );
}

/** Before anyone is described only the numbers' plausibility is looked at, and that hardly differs. */
function sexOf(): 'female' | 'male' {
  return athlete.value?.sex ?? 'female';
}

async function take(held: FhirDraft): Promise<void> {
  const sex = sexOf();
  const read = held.panels.map((panel) => {
    const time = panel.atMinutes === undefined ? {} : { time: formatClock(panel.atMinutes) };
    const { report, asked: _, ...typed } = panel;
    return readPanelDraft(typed, sex, {
      panel: nameUuid(`panel ${panel.date} ${time.time ?? ''} ${report}`),
      taking: takingBefore(ledger.peek(), { date: panel.date, ...time }),
      origin: 'fhir',
      ...(report !== '' && { report }),
    });
  });
  problems.value = read.flatMap((one) => one.problems);
  if (problems.value.length > 0) return;
  const panels = read.flatMap(({ panel }, place): NewFact[] => {
    const at = held.panels[place]?.atMinutes;
    return panel
      ? [
          {
            kind: 'blood-drawn',
            data: panel,
            day: panel.drawn.date,
            ...(at === undefined ? {} : { clock: at }),
          },
        ]
      : [];
  });
  const weights = (held.withWeights ? held.weights : []).map(
    ({ day, atMinutes, massKg }): NewFact => ({
      kind: 'body-weighed',
      data: { massKg, circumstances: ['other scale'] },
      day,
      ...(atMinutes === undefined ? {} : { clock: atMinutes }),
    }),
  );
  const saved = await recordAll([...panels, ...weights], {
    says: `${counted(panels.length, 'panel')} taken in`,
  });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(DRAFT);
  const newest = read.at(-1)?.panel?.panel;
  go(newest === undefined ? pathTo('health') : pathTo('health', 'panel', newest));
}

function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
