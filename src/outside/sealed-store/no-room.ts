/** A store's disk takes no more: it is full, or at fault. Nothing of what was asked is kept. */
export class NoRoom extends Error {
  override readonly name = 'NoRoom';
}
