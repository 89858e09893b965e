import type { JSX } from 'preact';
import { REMOVED, type Entry } from '#core/journal/entry.ts';
import { dataLines } from '#core/words/data-lines.ts';
import { dateWords } from '#core/words/dates.ts';
import { kindWords } from '#core/words/kind-words.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Facts } from '../../parts/facts.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { Tag } from '../../parts/tag.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { ledger, remove, restore } from '../../state/open-journal.ts';
import { nameOf } from './entry-names.ts';

/** One entry whole, with every version it ever had; nothing is ever overwritten. */
export function EntryScreen({ id }: { readonly id: string }): JSX.Element {
  const open = ledger.value;
  const asked = open.entry(id);
  if (!asked) {
    return (
      <Page title="Entry" back={pathTo('journal')}>
        <EmptyState
          title="There is no such entry"
          words="It may be in a copy that was not imported on this device."
        />
      </Page>
    );
  }
  const versions = open.history(id);
  const counting = versions.find((version) => open.inForce(version.id));
  return (
    <Page
      title={kindWords(asked.kind)}
      detail={`${dateWords(asked.day)}, ${asked.at.slice(11, 16)}`}
      back={pathTo('journal')}
    >
      {[...versions].reverse().map((version) => (
        <Version
          key={version.id}
          entry={version}
          counts={version.id === counting?.id}
          only={versions.length === 1}
        />
      ))}
      <ActionBar>
        {counting ? (
          <>
            <Button kind="caution" records onPress={() => void removeAndLeave(counting.id)}>
              Remove
            </Button>
            <Button kind="next" wide href={pathTo('journal', 'correct', counting.id)}>
              Correct
            </Button>
          </>
        ) : (
          <Button kind="next" records wide onPress={() => void restore(id, { says: 'Brought back' })}>
            Bring it back
          </Button>
        )}
      </ActionBar>
    </Page>
  );
}

function Version({
  entry,
  counts,
  only,
}: {
  readonly entry: Entry;
  readonly counts: boolean;
  readonly only: boolean;
}): JSX.Element {
  const written = `written ${entry.stamp.slice(0, 10)} ${entry.stamp.slice(11, 19)} UTC on device ${entry.device}`;
  const items = dataLines(entry.data, nameOf).map((line) => ({ name: line.field, value: line.value }));
  return (
    <Section
      title={versionTitle(entry, counts, only)}
      detail={written}
      action={counts && !only ? <Tag kind="next">counts</Tag> : undefined}
    >
      {items.length > 0 ? <Facts items={items} /> : <Note>No further words.</Note>}
    </Section>
  );
}

function versionTitle(entry: Entry, counts: boolean, only: boolean): string {
  if (entry.kind === REMOVED) return 'Removed';
  if (only) return 'As written';
  return counts ? 'As corrected' : 'Earlier version';
}

async function removeAndLeave(id: string): Promise<void> {
  const saved = await remove(id);
  if (saved.status !== 'refused') go(pathTo('journal'));
}
