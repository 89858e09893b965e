/** JSON text in which every number is finite and none is -0; a NaN is a fault of ours and must not leave. */
export function finiteJson(value: object): string {
  return JSON.stringify(value, (key, part: unknown) => {
    if (typeof part !== 'number') return part;
    if (!Number.isFinite(part)) throw new RangeError(`"${key}" is not a finite number`);
    return part === 0 ? 0 : part;
  });
}
