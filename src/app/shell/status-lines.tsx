import type { JSX } from 'preact';
import { dateWords } from '#core/words/dates.ts';
import { Button } from '../parts/button.tsx';
import { SavedLine } from '../parts/saved-line.tsx';
import { openWhich, which, chosen } from '../state/journals.ts';
import { closeCopy, openCopy } from '../state/lent.ts';
import { retrySaving, saving } from '../state/open-journal.ts';
import { pathTo, route } from './route.ts';
import { notKept, takeWaitingVersion, waitingVersion } from './updates.ts';

/** Whether what was entered is kept. Where it is not, it says why and tries again. */
export function SavedStatus(): JSX.Element {
  const state = saving.value;
  if (!('problem' in state))
    return which.value === 'lent' ? (
      <p class="saved-line">To read only</p>
    ) : (
      <SavedLine status={state.status} />
    );
  const { held, problem } = state;
  const waiting = held === 0 ? '' : held === 1 ? 'One entry waits. ' : `${held} entries wait. `;
  return (
    <div class="status-wrong">
      <SavedLine status={state.status} words={`${waiting}${problem.message} ${problem.remedy}`} />
      {held > 0 && (
        <Button records onPress={() => void retrySaving()}>
          Save again
        </Button>
      )}
    </div>
  );
}

/** Whose journal is open while it is the invented athlete's, and one tap to one's own. */
export function DemoLine(): JSX.Element | null {
  // On a subpage the hands are busy: the line stays with the front pages.
  if (which.value !== 'demo' || route.value.rest.length > 0) return null;
  return (
    <aside class="demo-line" aria-label="Demo">
      <p class="demo-words">
        {chosen.value
          ? 'An invented athlete’s journal.'
          : 'An invented athlete on a day that runs late. Try everything.'}
      </p>
      <Button onPress={() => void openWhich('own')} href={pathTo('day')}>
        Start my own
      </Button>
    </aside>
  );
}

/** Whose journal is lent to read, until when, and the way back to one's own. */
export function LentLine(): JSX.Element | null {
  const copy = openCopy.value;
  if (which.value !== 'lent' || !copy) return null;
  return (
    <aside class="demo-line" aria-label="Lent copy">
      <p class="demo-words">
        {`${copy.from}’s journal, lent to read until ${dateWords(copy.loan.until)}.`}
        {copy.problems.length > 0 && ` ${copy.problems[0]?.message ?? ''}`}
      </p>
      <Button onPress={() => void closeCopy()} href={pathTo('journal', 'lent')}>
        Close it
      </Button>
    </aside>
  );
}

/** A newer version is kept and waits; it never interrupts. Or the app could not be kept at all. */
export function UpdateLine(): JSX.Element | null {
  if (notKept.value !== undefined && route.value.rest.length === 0) {
    return (
      <aside class="demo-line" aria-label="Without a network">
        <p class="demo-words">
          {`This browser did not keep the app: it opens only with a network. What you enter is kept. (${notKept.value})`}
        </p>
      </aside>
    );
  }
  if (waitingVersion.value === undefined) return null;
  return (
    <aside class="demo-line" aria-label="New version">
      <p class="demo-words">A newer version is on this device. It is used when you open the app next.</p>
      <Button onPress={() => takeWaitingVersion(navigator.serviceWorker)}>Use it now</Button>
    </aside>
  );
}
