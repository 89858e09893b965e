import type { Entry } from './entry.ts';

/** Whether two entries say the same, whatever the order of their fields. */
export function sameEntry(a: Entry, b: Entry): boolean {
  return same(a, b);
}

function same(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) {
    return Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((x, i) => same(x, b[i]));
  }
  const [fieldsA, fieldsB] = [present(a), present(b)];
  if (fieldsA.size !== fieldsB.size) return false;
  for (const [field, value] of fieldsA)
    if (!fieldsB.has(field) || !same(value, fieldsB.get(field))) return false;
  return true;
}

function present(value: object): Map<string, unknown> {
  return new Map(Object.entries(value).filter(([, part]) => part !== undefined));
}
