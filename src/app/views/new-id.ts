/** A short unique name for a thing the athlete makes: "batch-3f9k2m7q". */
export function newId(prefix: string): string {
  const bytes = crypto.getRandomValues(new Uint8Array(8));
  return `${prefix}-${[...bytes].map((byte) => (byte % 36).toString(36)).join('')}`;
}
