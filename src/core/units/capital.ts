/** The same words with a capital at the front: tables write names in small letters, titles begin with a large one. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
