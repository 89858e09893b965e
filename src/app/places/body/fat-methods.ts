import type { DataOf } from '#core/journal/kinds/registry.ts';

type FatMethod = DataOf<'body-fat-measured'>['method'];

/** The ways body fat is measured elsewhere, in the words of the screens. */
export const FAT_METHODS = [
  { value: 'dxa', label: 'DXA scan' },
  { value: 'hydrodensitometry', label: 'Underwater weighing' },
  { value: 'skinfold', label: 'Skinfolds by someone else' },
  { value: 'tape', label: 'Tape' },
  { value: 'impedance', label: 'Impedance' },
  { value: 'other', label: 'Another method' },
] as const satisfies readonly { value: FatMethod; label: string }[];

/** What a method is called. */
export function fatMethodWords(method: FatMethod): string {
  return FAT_METHODS.find(({ value }) => value === method)?.label ?? method;
}
