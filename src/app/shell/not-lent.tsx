import type { JSX } from 'preact';
import { EmptyState } from '../parts/empty-state.tsx';
import { Page } from '../parts/page.tsx';

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
