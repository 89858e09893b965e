import { computed, signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Entry } from '#core/journal/entry.ts';
import { dateWords } from '#core/words/dates.ts';
import { factLine, plainLine } from '#core/words/entry-line.ts';
import { kindWords } from '#core/words/kind-words.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { pathTo } from '../../shell/route.ts';
import { exportedAgeDays } from '../../state/copies.ts';
import { which } from '../../state/journals.ts';
import { ledger } from '../../state/open-journal.ts';
import { syncing } from '../../state/sync.ts';
import { say } from '../../views/say.ts';
import { clockOf } from './clock-of.ts';
import { nameOf } from './entry-names.ts';

const query = signal('');
/** Days shown before "earlier" is asked for. */
const DAYS_AT_FIRST = 7;
const daysShown = signal(DAYS_AT_FIRST);
/** A copy older than this is worth a word (common practice, no source). */
const COPY_OLD_DAYS = 7;

const found = computed<readonly Entry[]>(() => {
  const words = query.value
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const inForce = ledger.value.entries().filter((entry) => ledger.value.inForce(entry.id));
  return words.length === 0 ? inForce : inForce.filter((entry) => matches(entry, words));
});

const byDay = computed(() => {
  const days = new Map<string, Entry[]>();
  for (const entry of found.value) days.set(entry.day, [...(days.get(entry.day) ?? []), entry]);
  return [...days.entries()].sort(([a], [b]) => (a < b ? 1 : -1));
});

/** All entries in force, newest day first, with a search over everything they say. */
export function EntriesScreen(): JSX.Element {
  const days = byDay.value;
  const shown = days.slice(0, daysShown.value);
  return (
    <Page title="Journal" detail={`${ledger.value.size} entries`}>
      {which.value !== 'lent' && <CopyAge />}
      <SyncStanding />
      <div class="row">
        <Button href={pathTo('journal', 'copies')}>Copies, import, export</Button>
        <Button href={pathTo('journal', 'devices')}>Devices</Button>
        <Button href={pathTo('journal', 'lent')}>Lent copies</Button>
        <Button href={pathTo('journal', 'check')}>Check</Button>
      </div>
      <TextField
        label="Search"
        hint="Words in any order: banana 2027-03 meal"
        value={query.value}
        onValue={(text) => search(text)}
      />
      {days.length === 0 && (
        <EmptyState
          title={query.value === '' ? 'Nothing is written yet' : 'No entry says that'}
          words={
            query.value === ''
              ? 'What you log in the other places is kept here.'
              : 'Try fewer or other words.'
          }
        />
      )}
      {shown.map(([day, entries]) => (
        <Section key={day} title={dateWords(day)} detail={day}>
          <List>
            {[...entries].reverse().map((entry) => (
              <ListRow
                key={entry.id}
                title={kindWords(entry.kind)}
                detail={summary(entry)}
                href={pathTo('journal', 'entry', entry.id)}
                figure={<span class="soft">{entry.at.slice(11, 16)}</span>}
              />
            ))}
          </List>
        </Section>
      ))}
      {days.length > shown.length && (
        <Button wide onPress={() => (daysShown.value += 4 * DAYS_AT_FIRST)}>
          {`Show earlier days (${days.length - shown.length} more)`}
        </Button>
      )}
    </Page>
  );
}

function CopyAge(): JSX.Element {
  const age = exportedAgeDays.value;
  if (age === undefined && syncing.value.status === 'in step') {
    return (
      <Caution
        title="No copy saved as a file"
        words="The server has the journal sealed; only the phrase opens it. Print the recovery sheet under Devices, or save a copy."
      />
    );
  }
  if (age === undefined) {
    return (
      <Caution
        title="No copy outside this browser"
        words="A lost phone or a cleared browser would take everything with it. Save a copy where you keep other things."
      />
    );
  }
  const words =
    age < 1
      ? 'A copy was saved today.'
      : `The last copy outside this browser is ${Math.floor(age)} days old.`;
  return age > COPY_OLD_DAYS ? <Caution title="The copy is old" words={words} /> : <Note>{words}</Note>;
}

/** Said only where devices are kept in step. */
function SyncStanding(): JSX.Element | null {
  const stands = syncing.value;
  if (stands.status === 'off') return null;
  if (stands.status === 'apart')
    return <Caution title={`Not in step: ${stands.problem.message}`} words={stands.problem.remedy} />;
  if (stands.status === 'working') return <Note>Bringing the devices together …</Note>;
  const [problem] = stands.problems;
  return problem ? (
    <Caution title={problem.message} words={problem.remedy} />
  ) : (
    <Note>{`In step with the server at ${clockOf(stands.atMs)}.`}</Note>
  );
}

function search(text: string): void {
  query.value = text;
  daysShown.value = DAYS_AT_FIRST;
}

function matches(entry: Entry, words: readonly string[]): boolean {
  const text = `${entry.day} ${kindWords(entry.kind)} ${summary(entry)}`.toLowerCase();
  return words.every((word) => text.includes(word));
}

/** What an entry says, in one line; body mass in the athlete's own unit. */
function summary(entry: Entry): string {
  const fact = ledger.value.fact(entry.id);
  const words = fact ? factLine(fact, nameOf) : `kept, not read by this version: ${plainLine(entry, nameOf)}`;
  if (entry.kind === 'body-weighed') return say(words);
  return words.length > 140 ? `${words.slice(0, 137)}...` : words;
}
