import type { Problem } from '#core/problems/problem.ts';

/** What stands beside a field: the fault of its path with the remedy, if there is one. */
export function problemAt(problems: readonly Problem[], path: string): string | undefined {
  const found = problems.find((problem) => problem.path === path || problem.path.endsWith(`.${path}`));
  return found && `${found.message} ${found.remedy}`;
}
