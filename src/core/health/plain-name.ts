/** A name without case, spaces and punctuation, so that "25(OH)D", "25-OH d" and "25 oh D" are one. */
export function plainName(name: string): string {
  return name.toLowerCase().replace(/[^a-z0-9]/g, '');
}
