/**
 * A store that cannot be asked now and may be again in a moment: nothing was acknowledged, and asking again does no harm.
 * `reason` is a code or a sentence of the driver; it never holds what was asked or a secret.
 */
export class StoreAwayError extends Error {
  readonly reason: string;

  constructor(reason: string) {
    super(`the store of sealed journals does not answer (${reason})`);
    this.name = 'StoreAwayError';
    this.reason = reason;
  }
}
