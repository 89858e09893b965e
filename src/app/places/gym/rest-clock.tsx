import type { JSX } from 'preact';
import { seconds } from '../../state/seconds.ts';
import { restedSeconds, restWords } from './set-draft.ts';
import './set-card.css';

interface RestClockProps {
  /** When the last set of the session was done. */
  readonly lastSetMs: number | undefined;
  /** Rest the scheme asks for before the next set. */
  readonly wantedSeconds: number | undefined;
}

/** Time since the last set, from the moment it was done: it is right however long the screen was off. */
export function RestClock({ lastSetMs, wantedSeconds }: RestClockProps): JSX.Element | null {
  const rested = restedSeconds(lastSetMs, seconds.value);
  if (rested === undefined) return null;
  const over = wantedSeconds !== undefined && rested >= wantedSeconds;
  return (
    <p class="rest-clock">
      <span>Rested</span>
      <span class="rest-time">{restWords(rested)}</span>
      {wantedSeconds !== undefined && <span>{over ? 'ready' : `of ${restWords(wantedSeconds)}`}</span>}
    </p>
  );
}
