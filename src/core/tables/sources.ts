import { gymSources } from './sources-gym.ts';
import { healthSources } from './sources-health.ts';
import { kitchenSources } from './sources-kitchen.ts';
import { limitSources } from './sources-limits.ts';
import { scienceSources } from './sources-science.ts';
import { tableSources } from './sources-tables.ts';

/** Every source the tool cites, by key: one list from the parts of the rooms. */
export const sources = {
  ...tableSources,
  ...kitchenSources,
  ...gymSources,
  ...limitSources,
  ...healthSources,
  ...scienceSources,
} as const satisfies Record<string, string>;

export type SourceKey = keyof typeof sources;

/** The full reference behind a key. */
export function citation(key: SourceKey): string {
  return sources[key];
}
