import type { JSX } from 'preact';
import type { LastWeekNow } from '#core/cycle/last-week-now.ts';
import type { Rehearsal } from '#core/cycle/rehearsals.ts';
import { dateWords } from '#core/words/dates.ts';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';

/** Rehearsals so far and what they taught, and when one still can be held. */
export function RehearsalSection({ now }: { readonly now: LastWeekNow }): JSX.Element {
  const { rehearsals, rehearse } = now;
  return (
    <Section title="Rehearsal">
      {rehearsals.length === 0 && !rehearse && (
        <Note>None was held, and it is too late for one: load less, or not at all.</Note>
      )}
      <List label="Rehearsals">
        {rehearsals.map((one) => (
          <ListRow
            key={one.from}
            title={titleOf(one)}
            detail={lessonsOf(one)}
            href={pathTo('course', 'rehearsal')}
          />
        ))}
        {rehearse && (
          <ListRow
            title={
              rehearsals.some(({ state }) => state !== 'over') ? 'Move the rehearsal' : 'Plan a rehearsal'
            }
            detail={`the dress rehearsal: its morning after between ${dateWords(rehearse.dressFrom)} and ${dateWords(rehearse.until)}`}
            href={pathTo('course', 'rehearsal')}
          />
        )}
      </List>
    </Section>
  );
}

function titleOf({ from, state }: Rehearsal): string {
  if (state === 'ahead') return `Loading from ${dateWords(from)}`;
  return state === 'running' ? 'The rehearsal is under way' : `Held from ${dateWords(from)}`;
}

function lessonsOf({ judged, state }: Rehearsal): string {
  if (judged) return [`Next time ${judged.again}`, ...(judged.lessons ? [judged.lessons] : [])].join('. ');
  return state === 'over' ? 'How did it go? Say it while it is fresh.' : 'planned';
}
