import type { Minutes } from '../units/quantities.ts';
import type { SourceKey } from './sources.ts';
import type { StorageClass } from './storage-clock.ts';

export interface SafeTemperature {
  /** Degrees Celsius in the middle of the piece; absent where the look decides. */
  readonly minimumC?: number;
  readonly restMinutes: Minutes;
  readonly sign?: string;
  readonly source: SourceKey;
}

const chart = (minimumC: number, restMinutes: Minutes = 0, sign?: string): SafeTemperature => ({
  minimumC,
  restMinutes,
  ...(sign !== undefined && { sign }),
  source: 'safe-temperature-chart',
});

/** What raw food is cooked to; 160 F, 165 F and 145 F of the chart to the tenth of a degree Celsius. */
const cookTo: Partial<Record<StorageClass, SafeTemperature>> = {
  'raw-mince': chart(71.1),
  'raw-poultry-mince': chart(73.9),
  'raw-poultry': chart(73.9),
  'raw-meat': chart(62.8, 3),
  'raw-fish': chart(62.8, 0, 'or the flesh is opaque and flakes'),
  'raw-fatty-fish': chart(62.8, 0, 'or the flesh is opaque and flakes'),
  'raw-shellfish': {
    restMinutes: 0,
    sign: 'the flesh is pearly and opaque',
    source: 'safe-temperature-chart',
  },
  'egg-in-shell': chart(71.1, 0, 'or yolk and white are firm'),
  'egg-out-of-shell': chart(71.1),
};

/** Leftovers are heated through to 165 F. */
export const reheatTo: SafeTemperature = chart(73.9);

/** What food of a class is cooked to before it is eaten; undefined where it needs no cooking for safety. */
export function safeTemperature(storage: StorageClass): SafeTemperature | undefined {
  return cookTo[storage];
}
