/**
 * Reads a table written as text: one row a line, columns parted by " | ", "-" for a cell that holds nothing.
 * A row with another number of columns is a fault of ours and throws, so a slip in a table cannot ship.
 */
export function readTextTable(text: string, columns: number): readonly (readonly string[])[] {
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map((line) => {
      const cells = line.split('|').map((cell) => cell.trim());
      if (cells.length !== columns) {
        throw new RangeError(`${cells.length} columns where ${columns} belong: ${line}`);
      }
      return cells;
    });
}

/** A number of a cell; undefined for "-", which is "not known" and never zero. */
export function cellNumber(cell: string | undefined): number | undefined {
  if (cell === undefined || cell === '-') return undefined;
  return requiredNumber(cell);
}

export function requiredNumber(cell: string | undefined): number {
  const value = Number(cell);
  if (cell === undefined || cell.trim() === '' || !Number.isFinite(value)) {
    throw new RangeError(`not a number in a table: ${String(cell)}`);
  }
  return value;
}

/** Texts of a cell parted by a mark; none for "-". */
export function cellList(cell: string | undefined, mark: string): readonly string[] {
  if (cell === undefined || cell === '-') return [];
  return cell.split(mark).map((part) => part.trim());
}

/** One of a list of words; anything else is a fault of ours. */
export function cellWord<Word extends string>(cell: string | undefined, words: readonly Word[]): Word {
  const word = words.find((known) => known === cell);
  if (word === undefined) throw new RangeError(`"${String(cell)}" is none of ${words.join(', ')}`);
  return word;
}
