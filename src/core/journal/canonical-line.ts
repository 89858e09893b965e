import type { Entry } from './entry.ts';

const ORDER = ['id', 'stamp', 'device', 'kind', 'version', 'day', 'at', 'zone', 'data', 'replaces'] as const;
const KNOWN: ReadonlySet<string> = new Set(ORDER);

/**
 * The one text of an entry: known fields in their fixed order, fields this version does not know after them by
 * name, everything inside by name. Same entry, same bytes, on every device. Names sort by UTF-16 code unit.
 */
export function canonicalLine(entry: Entry): string {
  const fields = new Map<string, unknown>(Object.entries(entry));
  const parts: string[] = [];
  for (const field of ORDER) push(parts, field, fields.get(field));
  if (fields.size > parts.length) {
    for (const field of [...fields.keys()].sort())
      if (!KNOWN.has(field)) push(parts, field, fields.get(field));
  }
  return `{${parts.join(',')}}`;
}

function push(parts: string[], field: string, value: unknown): void {
  if (value !== undefined) parts.push(`${JSON.stringify(field)}:${canonical(value)}`);
}

function canonical(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  const fields = new Map<string, unknown>(Object.entries(value));
  const parts: string[] = [];
  for (const field of [...fields.keys()].sort()) push(parts, field, fields.get(field));
  return `{${parts.join(',')}}`;
}
