/**
 * Wet and chalked fingers press twice, and press where the last screen had a button. A recording button takes
 * one press a second, and none in the first 300 ms after the screen changed.
 */
const SECOND_PRESS_MS = 1000;
const GHOST_MS = 300;

let screenChangedAtMs = Number.NEGATIVE_INFINITY;

/** Called by the shell whenever another screen comes up; `atMs` is an event's timeStamp. */
export function noteScreenChange(atMs: number): void {
  screenChangedAtMs = atMs;
}

/** True where a press on the present screen is meant: not within 300 ms of the screen's change. */
export function isMeant(atMs: number): boolean {
  return atMs - screenChangedAtMs >= GHOST_MS;
}

/**
 * A gate that lets one press a second through. `atMs` is the press event's timeStamp. `closedFromMs`: also none in
 * the second after that, for a button that comes up under the finger.
 */
export function pressGate(closedFromMs = Number.NEGATIVE_INFINITY): (atMs: number) => boolean {
  let lastMs = closedFromMs;
  return (atMs) => {
    if (!isMeant(atMs) || atMs - lastMs < SECOND_PRESS_MS) return false;
    lastMs = atMs;
    return true;
  };
}
