import type { JSX } from 'preact';
import type { SessionWalk, WalkedStep } from '#core/gym/session/session-walk.ts';
import { Button } from '../../parts/button.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { loadWords } from './gym-words.ts';
import { endSession } from './end-session.ts';
import { sessionRows, type SessionRow } from './session-rows.ts';

interface SessionListProps {
  readonly walk: SessionWalk;
  readonly next: WalkedStep | undefined;
  readonly onChoose: (slot: string) => void;
}

/** Every exercise of the session with what is done of it; a press takes it next. */
export function SessionList({ walk, next, onChoose }: SessionListProps): JSX.Element {
  return (
    <Section title="The session" detail="press an exercise to do it now">
      <List>
        {sessionRows(walk).map((row) => (
          <ListRow
            key={row.slot}
            title={row.name}
            detail={<Detail row={row} />}
            state={row.slot === next?.slot ? 'next' : row.open === 0 ? 'done' : 'plain'}
            onPress={() => {
              onChoose(row.slot);
              window.scrollTo({ top: 0 });
            }}
          />
        ))}
      </List>
      <div class="row">
        <Button href={pathTo('gym', 'add')}>Add an exercise</Button>
        {next !== undefined && walk.sets.length > 0 && (
          <Button records onPress={() => void endSession(walk)}>
            End here
          </Button>
        )}
      </div>
    </Section>
  );
}

function Detail({ row }: { readonly row: SessionRow }): JSX.Element {
  const hard = [...row.done.map(({ done }) => done), ...row.extra].filter(
    (set) => set !== undefined && set.data.set !== 'warm-up',
  );
  const sets = hard.map((set) => (set ? `${loadWords(set.data.load)} × ${set.data.reps}` : ''));
  const count = `${row.done.length} of ${row.planned} sets${row.extra.length > 0 ? `, ${row.extra.length} more` : ''}`;
  return (
    <>
      {row.together.length > 0 && <span>{`together with ${row.together.join(', ')}; `}</span>}
      <span>{count}</span>
      {sets.length > 0 && <span>{`: ${sets.join('; ')}`}</span>}
    </>
  );
}
