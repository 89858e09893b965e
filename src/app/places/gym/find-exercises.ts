import type { Exercise } from '#core/gym/book/exercise-book.ts';

const MOST = 12;

/** Exercises whose name or muscles hold every word that was typed; described ones first, as the book has them. */
export function findExercises(all: readonly Exercise[], typed: string): readonly Exercise[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return [];
  const holds = ({ name, prime }: Exercise) => {
    const text = `${name} ${prime.join(' ')}`.toLowerCase();
    return words.every((word) => text.includes(word));
  };
  return all.filter(holds).slice(0, MOST);
}
