import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Facts } from '../../parts/facts.tsx';
import { FileField } from '../../parts/file-field.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { LightChoice } from '../../shell/light-choice.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import {
  askToPersist,
  exportAs,
  exportedAgeDays,
  importFile,
  journalText,
  noteExported,
  persisted,
  sealedText,
} from '../../state/copies.ts';
import { openWhich, which } from '../../state/journals.ts';
import { syncing } from '../../state/sync.ts';
import { download } from './download.ts';

interface Outcome {
  readonly words: string;
  readonly problems: readonly Problem[];
}

const imported = signal<Outcome | undefined>(undefined);

/** The journal as a file: out to a place of one's own, and in again. */
export function CopiesScreen(): JSX.Element {
  return (
    <Page title="Copies" back={pathTo('journal')}>
      <Section title="Out" detail="JSON Lines: one entry a line, readable in any text editor">
        <Button kind="next" wide onPress={saveCopy}>
          Save a copy of the journal
        </Button>
        <Note>{ageWords(exportedAgeDays.value)}</Note>
        {syncing.value.status !== 'off' && (
          <>
            <Button wide onPress={() => void saveSealed()}>
              Save a sealed copy
            </Button>
            <Note>Opens only on a device that has joined with this journal's phrase.</Note>
          </>
        )}
        <div class="row">
          <Button onPress={() => void saveAs('csv')}>Save as a table (CSV)</Button>
          <Button onPress={() => void saveAs('fhir')}>Save blood and body (FHIR)</Button>
        </div>
      </Section>
      <Section title="In" detail="Entries already here are passed over; nothing is overwritten">
        <FileField
          label="A copy of a journal"
          accept=".jsonl,.ndjson,.json,.txt,.csv"
          onFile={(file) => void take(file)}
        />
        <Imported />
      </Section>
      <Storage />
      <WhichJournal />
    </Page>
  );
}

function Imported(): JSX.Element | null {
  const outcome = imported.value;
  if (!outcome) return null;
  return (
    <div role="status">
      <Note>{outcome.words}</Note>
      {outcome.problems.length > 0 && (
        <List>
          {outcome.problems.map((problem, place) => (
            <ListRow key={place} title={`${problem.path}: ${problem.message}`} detail={problem.remedy} />
          ))}
        </List>
      )}
    </div>
  );
}

function Storage(): JSX.Element {
  return (
    <Section title="On this device">
      <Facts
        items={[
          { name: 'Kept in', value: "this browser's own storage, nowhere else" },
          {
            name: 'Cleared when space runs short',
            value: persisted.value ? 'no, the browser promised' : 'possibly',
          },
        ]}
      />
      <LightChoice />
      {!persisted.value && <Button onPress={() => void askToPersist()}>Ask the browser to keep it</Button>}
    </Section>
  );
}

function WhichJournal(): JSX.Element {
  const demo = which.value === 'demo';
  return (
    <Section title="Which journal">
      {demo && (
        <Caution
          title="This is the demonstration"
          words="An invented athlete; nothing here is yours or real."
        />
      )}
      <Button onPress={() => void openWhich(demo ? 'own' : 'demo')}>
        {demo ? 'Open my own journal' : 'Look at the demonstration'}
      </Button>
    </Section>
  );
}

function saveCopy(): void {
  download(`stagewright-${today.value}.jsonl`, journalText(), 'application/x-ndjson');
  noteExported();
}

async function saveSealed(): Promise<void> {
  const text = await sealedText();
  if (text === undefined) return;
  download(`stagewright-${today.value}-sealed.jsonl`, text, 'application/x-ndjson');
  noteExported();
}

/** A table is for a spreadsheet, FHIR for a physician's system; neither counts as the copy to fall back on. */
async function saveAs(format: string): Promise<void> {
  const file = await exportAs(format, today.value);
  if (file) download(file.name, file.text, file.mediaType);
}

async function take(file: File): Promise<void> {
  const result = await importFile(file);
  const added = `${result.added} ${result.added === 1 ? 'entry' : 'entries'} came in, ${result.known} were here already`;
  const damaged = result.problems.length;
  imported.value = {
    words:
      damaged === 0
        ? `${added}.`
        : `${added}; ${damaged} ${damaged === 1 ? 'line' : 'lines'} could not be read.`,
    problems: result.problems,
  };
}

function ageWords(days: number | undefined): string {
  if (days === undefined) return 'No copy has left this browser yet.';
  if (days < 1) return 'The last copy was saved today.';
  return `The last copy was saved ${Math.floor(days)} ${days < 2 ? 'day' : 'days'} ago.`;
}
