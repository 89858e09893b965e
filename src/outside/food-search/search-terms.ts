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

/** What was typed with two neighbouring letters of one word the other way round: "onoin" may mean "onion". */
export function withSwappedLetters(typed: string): string[] {
  const words = wordsOf(typed);
  return words.flatMap((word, place) => {
    if (slipsAllowed(word) === 0) return [];
    return Array.from({ length: word.length - 1 }, (_, i) => {
      const swapped = word.slice(0, i) + word.charAt(i + 1) + word.charAt(i) + word.slice(i + 2);
      return words.map((other, at) => (at === place ? swapped : other)).join(' ');
    });
  });
}
