import type { JSX } from 'preact';
import type { LentPart } from '#core/journal/kinds/lending.ts';
import { EmptyState } from '../parts/empty-state.tsx';
import { Page } from '../parts/page.tsx';
import { openCopy } from '../state/lent.ts';

/** The part of a journal that each place reads; the Journal itself shows whatever is there. */
const PART_OF: Readonly<Record<string, LentPart | undefined>> = {
  '': 'food',
  day: 'food',
  kitchen: 'food',
  gym: 'training',
  body: 'body',
  course: 'course',
  health: 'health',
};

/** Whether a place of the lent copy that is open has anything to show. */
export function isLentPlace(place: string): boolean {
  const part = PART_OF[place];
  return part === undefined || openCopy.value?.loan.parts.includes(part) === true;
}

/** In the place of a place that was not lent. */
export function NotLent(): JSX.Element {
  return (
    <Page title="Not lent">
      <EmptyState
        title="This part of the journal stays with its owner"
        words="The other places show what was lent to you."
      />
    </Page>
  );
}
