import type { JSX } from 'preact';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Page } from '../../parts/page.tsx';
import { pathTo } from '../../shell/route.ts';
import { unreadable } from '../../state/journals.ts';
import { ledger } from '../../state/open-journal.ts';

/** Every entry that is kept but cannot be counted, with what to do about it. */
export function CheckScreen(): JSX.Element {
  const open = ledger.value;
  const problems = [...unreadable.value, ...open.problems];
  return (
    <Page title="Check" detail={`${open.size} entries read`} back={pathTo('journal')}>
      {problems.length === 0 ? (
        <EmptyState
          title="Every entry reads well"
          words="Nothing is damaged and nothing is left uncounted."
        />
      ) : (
        <List>
          {problems.map((problem) => (
            <ListRow
              key={`${problem.code} ${problem.path}`}
              title={problem.message}
              detail={problem.remedy}
              {...(open.entry(problem.path) && { href: pathTo('journal', 'entry', problem.path) })}
            />
          ))}
        </List>
      )}
    </Page>
  );
}
