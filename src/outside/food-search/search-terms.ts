/** Words that tell no food from another. */
const PASSED_OVER = new Set(['of', 'and', 'the', 'a', 'an', 'or', 'by']);

/** Words of a text: letters or digits in a row, so that "93/7" is two and "0.5" is two. */
export function wordsOf(text: string): string[] {
  return text.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== '');
}

/**
 * A word as it is looked up: lower case, without accents, singular where an English plural ends in s. Undefined for words
 * that are passed over.
 */
export function lookUpForm(word: string): string | undefined {
  const plain = word.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');
  if (PASSED_OVER.has(plain)) return undefined;
  if (plain.length > 4 && plain.endsWith('ies')) return `${plain.slice(0, -3)}y`;
  if (plain.length > 3 && plain.endsWith('oes')) return plain.slice(0, -2);
  if (plain.length > 3 && plain.endsWith('s') && !plain.endsWith('ss')) return plain.slice(0, -1);
  return plain;
}

/** Slips allowed in a word: none in short ones, where a slip makes another word. */
export function slipsAllowed(word: string): number {
  if (word.length < 4 || /\d/.test(word)) return 0;
  return word.length < 7 ? 1 : 2;
}
