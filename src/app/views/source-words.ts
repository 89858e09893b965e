import { sources } from '#core/tables/sources.ts';

/** The citation behind a source key; what is no key is said as it stands. */
export function sourceWords(key: string): string {
  const known: { readonly [key: string]: string | undefined } = sources;
  return known[key] ?? key;
}
