/**
 * A store whose disk takes no more: it is full, or at fault. Nothing of what was asked is kept. `reason` is in the words of
 * the store; it never holds what was asked or a secret.
 */
export class NoRoomError extends Error {
  constructor(reason: string) {
    super(`the disk of the sealed journals takes no more (${reason})`);
    this.name = 'NoRoomError';
  }
}
