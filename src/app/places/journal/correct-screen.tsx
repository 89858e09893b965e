import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import type { Entry } from '#core/journal/entry.ts';
import { isKnownKind } from '#core/journal/kinds/registry.ts';
import type { Problem } from '#core/problems/problem.ts';
import { kindWords } from '#core/words/kind-words.ts';
import { leavesOf, withLeaf, type Leaf } from '#core/words/leaves.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { problemAt } from '../../views/problem-at.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { correct, ledger } from '../../state/open-journal.ts';
import { nameOf } from './entry-names.ts';

const problems = signal<readonly Problem[]>([]);
/** Corrected values by path; what is not in here stays as it was. */
const correctDraft = v.record(v.string(), v.union([v.string(), v.number(), v.boolean()]));

/** Corrects any value of an entry. What was written before stays in its history. */
export function CorrectScreen({ id }: { readonly id: string }): JSX.Element {
  const entry = ledger.value.entry(id);
  if (!entry || !isKnownKind(entry.kind) || !ledger.value.inForce(id)) {
    return (
      <Page title="Correct" back={pathTo('journal')}>
        <EmptyState
          title="This entry cannot be corrected here"
          words="It was corrected or removed since, or a newer version of the program wrote it."
        />
      </Page>
    );
  }
  return <Correcting entry={entry} />;
}

function Correcting({ entry }: { readonly entry: Entry }): JSX.Element {
  const key = `journal/correct/${entry.id}`;
  const typed = draft(key, correctDraft, {});
  const leaves = leavesOf(entry.data);
  return (
    <Page title={`Correct: ${kindWords(entry.kind)}`} back={pathTo('journal', 'entry', entry.id)}>
      <Note>The entry as it was stays in its history; this one counts from now on.</Note>
      <Form onSubmit={() => void keep(entry, typed.value, key)} problems={problems.value}>
        <div class="stack">
          {leaves.map((leaf) => (
            <LeafField
              key={leaf.path.join('.')}
              leaf={leaf}
              value={typed.value[leaf.path.join('.')] ?? leaf.value}
              onValue={(value) => {
                typed.value = { ...typed.value, [leaf.path.join('.')]: value };
              }}
            />
          ))}
        </div>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep the correction
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface LeafFieldProps {
  readonly leaf: Leaf;
  readonly value: Leaf['value'];
  readonly onValue: (value: Leaf['value']) => void;
}

function LeafField({ leaf, value, onValue }: LeafFieldProps): JSX.Element {
  const label = leaf.path.map((step) => (/^\d+$/.test(step) ? String(Number(step) + 1) : step)).join(' ');
  const path = leaf.path.join('.');
  const problem = problemAt(problems.value, path);
  if (typeof leaf.value === 'number') {
    return (
      <NumberField
        label={label}
        value={typeof value === 'number' ? value : undefined}
        decimals={3}
        onValue={(n) => {
          if (n !== undefined) onValue(n);
        }}
        problem={problem}
      />
    );
  }
  if (typeof leaf.value === 'boolean')
    return <CheckField label={label} checked={value === true} onChecked={onValue} />;
  const known = nameOf(leaf.value);
  return (
    <TextField
      label={label}
      value={String(value)}
      onValue={onValue}
      problem={problem}
      {...(known !== undefined && { hint: known })}
    />
  );
}

async function keep(entry: Entry, typed: v.InferOutput<typeof correctDraft>, key: string): Promise<void> {
  let data: unknown = entry.data;
  for (const leaf of leavesOf(entry.data)) {
    const value = typed[leaf.path.join('.')];
    if (value !== undefined) data = withLeaf(data, leaf.path, value);
  }
  const saved = await correct(entry.id, data);
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(pathTo('journal', 'entry', entry.id));
}
