/** A single value inside an entry's data: where it stands and what it is. */
export interface Leaf {
  readonly path: readonly string[];
  readonly value: string | number | boolean;
}

/** Every single value of an entry's data, in order, so that each can be corrected by itself. */
export function leavesOf(data: unknown, path: readonly string[] = []): Leaf[] {
  if (typeof data === 'string' || typeof data === 'number' || typeof data === 'boolean') {
    return [{ path, value: data }];
  }
  if (Array.isArray(data)) return data.flatMap((part, place) => leavesOf(part, [...path, String(place)]));
  if (typeof data === 'object' && data !== null) {
    return Object.entries(data).flatMap(([field, part]) => leavesOf(part, [...path, field]));
  }
  return [];
}

/** The data with one value replaced; everything else is the same. */
export function withLeaf(data: unknown, path: readonly string[], value: Leaf['value']): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(data)) {
    return data.map((part: unknown, place) => (String(place) === step ? withLeaf(part, rest, value) : part));
  }
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(
    Object.entries(data).map(([field, part]: [string, unknown]) => [
      field,
      field === step ? withLeaf(part, rest, value) : part,
    ]),
  );
}
