/** The rooms of the house from top to bottom. Arrows point down this list only; rooms on one line do not import each other. */
export const LINES: readonly (readonly string[])[] = [
  ['app', 'cli', 'server'],
  ['demo'],
  ['outside'],
  ['core/cycle'],
  ['core/words'],
  ['core/day', 'core/course', 'core/week'],
  ['core/body', 'core/kitchen', 'core/gym', 'core/health'],
  ['core/science', 'core/tables', 'core/limits', 'core/journal'],
  ['core/problems'],
  ['core/units', 'core/random'],
];

/** Arrows along a line or against it that are part of the plan, each with its reason. */
export const ALLOWED: ReadonlyMap<string, string> = new Map([
  ['cli > server', 'the command "serve" starts the server'],
  ['core/problems > core/units', 'shapes of clock times and dates'],
]);

/** The only package the core may use, and the packages whose files it may read as data types. */
export const CORE_PACKAGES: readonly string[] = ['valibot'];

/** The room a file of the repository belongs to; undefined where it is in none. */
export function roomOf(file: string): string | undefined {
  const [top, second, third] = file.split('/');
  if (top === 'demo') return 'demo';
  if (top !== 'src' || second === undefined) return undefined;
  return second === 'core' ? `core/${third}` : second;
}

function lineOf(room: string): number {
  return LINES.findIndex((line) => line.includes(room));
}

/** Why an import must not be; undefined where it may. */
export function wrongArrow(from: string, to: string): string | undefined {
  if (from === to || ALLOWED.has(`${from} > ${to}`)) return undefined;
  const [fromLine, toLine] = [lineOf(from), lineOf(to)];
  if (fromLine === -1) return `"${from}" is no room of the house`;
  if (toLine === -1) return `"${to}" is no room of the house`;
  if (fromLine === toLine) return `"${from}" and "${to}" stand on one line`;
  return fromLine < toLine ? undefined : `"${to}" stands above "${from}"`;
}
