import type { Problem } from '#core/problems/problem.ts';

/** The code of a server that speaks of another order; `synchronize` mends it by comparing names. */
export const PUT_BACK = 'sync/put-back';

export const NOT_REACHED: Problem = {
  code: 'sync/not-reached',
  path: '',
  message: 'The server was not reached.',
  remedy: 'Everything is kept on this device; it is tried again when there is a connection.',
};

/** A browser takes a head that was cut off for a whole answer with nothing in it; a network's own page answers in HTML. */
export const BROKEN_OFF: Problem = {
  code: 'sync/broken-off',
  path: '',
  message: 'The answer of the server broke off, or another page came in its place.',
  remedy: 'Everything is kept on this device; it is tried again when there is a connection.',
};

const NOT_LET_IN: Problem = {
  code: 'sync/not-let-in',
  path: '',
  message: 'The server does not let this device in: the key was changed on another device.',
  remedy: 'Type the new phrase, or go on without the other device.',
};

const OTHER_ORDER: Problem = {
  code: PUT_BACK,
  path: '',
  message: 'The server has another order of this journal than before.',
  remedy: 'Bring the devices in step once more.',
};

const ASKED_TO_WAIT: Problem = {
  code: 'sync/asked-to-wait',
  path: '',
  message: 'The server asks to wait: too many requests came at once.',
  remedy: 'Everything is kept on this device; it is tried again in a minute.',
};

/** The code of a server that takes nothing more; it still hands over what it has. */
export const SERVER_FULL = 'sync/server-full';

const NO_ROOM_THERE: Problem = {
  code: SERVER_FULL,
  path: '',
  message: 'The server has no room: the newest entries are not on the server.',
  remedy:
    'Everything is kept on this device. It is sent once whoever runs the server has made room; until then keep a copy outside this browser.',
};

const NO_STORE: Problem = {
  code: 'sync/no-store',
  path: '',
  message: 'The server that this app came from keeps no journals.',
  remedy: 'Start it with a folder for them: "stagewright serve --data DIR".',
};

const SERVER_AWAY: Problem = {
  code: 'sync/server-away',
  path: '',
  message: 'The server can keep nothing just now.',
  remedy: 'Everything is kept on this device; it is tried again in a minute.',
};

const BY_STATUS: ReadonlyMap<number, Problem> = new Map([
  [403, NOT_LET_IN],
  [404, NO_STORE],
  [405, NO_STORE],
  [409, OTHER_ORDER],
  [429, ASKED_TO_WAIT],
  [503, SERVER_AWAY],
  [507, NO_ROOM_THERE],
]);

/** What an answer that is none means for this device, by its HTTP status. */
export function answerProblem(status: number): Problem {
  const known = BY_STATUS.get(status);
  if (known) return known;
  if (status >= 500)
    return {
      code: 'sync/server-fault',
      path: '',
      message: `The server met a fault of its own (${status}).`,
      remedy: 'Everything is kept on this device; it is tried again.',
    };
  return {
    code: 'sync/not-understood',
    path: '',
    message: `The server answered in a way this version does not understand (${status}).`,
    remedy: 'Try again later; if it goes on, update the app or the server.',
  };
}
