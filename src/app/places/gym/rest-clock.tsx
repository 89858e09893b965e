import type { JSX } from 'preact';
import type { SessionWalk, WalkedStep } from '#core/gym/session/session-walk.ts';
import { nowToSecond } from '../../state/seconds.ts';
import { restSince, restWords } from './rest-words.ts';

/** Past this a rest is a break and is not counted any longer. */
const LONGEST_SECONDS = 3600;

/** Time since the last set, from its moment in the journal; what is asked for before the next one beside it. */
export function RestClock({
  walk,
  next,
}: {
  readonly walk: SessionWalk;
  readonly next: WalkedStep | undefined;
}): JSX.Element | null {
  const last = Math.max(...walk.sets.map(({ epochMs }) => epochMs));
  if (!Number.isFinite(last)) return null;
  const seconds = restSince(last, nowToSecond.value);
  if (seconds > LONGEST_SECONDS) return null;
  const asked = next?.target.restSeconds;
  const over = asked !== undefined && seconds >= asked;
  return (
    <p class={over ? 'rest rest-over' : 'rest'} role="timer" aria-label="Rest">
      <span class="rest-time">{restWords(seconds)}</span>
      <span class="rest-words">
        {asked === undefined
          ? 'rest since the last set'
          : over
            ? `rested: ${restWords(asked)} were asked`
            : `rest, of ${restWords(asked)} asked`}
      </span>
    </p>
  );
}
