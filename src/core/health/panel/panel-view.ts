import type { PanelRequest } from './panel-request.ts';
import type { ReadPanel } from './read-panel-values.ts';
import type { PanelResult } from './reading.ts';
import { substanceKey } from '../supplements/find-substance.ts';

/** What was being taken, resolved to the tables' keys. */
export interface Taken {
  readonly name: string;
  readonly key: string | undefined;
  readonly mgPerDay?: number;
  readonly hoursSinceLast?: number;
}

/** A judged panel with its circumstances: what the rules for notes and cautions look at. */
export interface PanelView {
  readonly request: PanelRequest;
  readonly panel: ReadPanel;
  readonly results: readonly PanelResult[];
  readonly taken: readonly Taken[];
  /** The result of an analyte: a number or a bound, but none that was given twice with different results. */
  result(key: string): PanelResult | undefined;
  /** Its value in the conventional unit; none for a bound. */
  number(key: string): number | undefined;
  isHigh(key: string): boolean;
  isLow(key: string): boolean;
  takes(key: string): Taken | undefined;
}

export function panelView(
  request: PanelRequest,
  panel: ReadPanel,
  results: readonly PanelResult[],
): PanelView {
  const taken = request.taking.map((item): Taken => {
    const given = typeof item === 'string' ? { substance: item } : item;
    return {
      name: given.substance,
      key: substanceKey(given.substance),
      ...(given.mgPerDay === undefined ? {} : { mgPerDay: given.mgPerDay }),
      ...(given.hoursSinceLast === undefined ? {} : { hoursSinceLast: given.hoursSinceLast }),
    };
  });
  const result = (key: string) => {
    const read = panel.shown(key);
    return read && results[read.index];
  };
  return {
    request,
    panel,
    results,
    taken,
    result,
    number: (key) => panel.usable(key)?.known?.conventional,
    isHigh: (key) => result(key)?.position === 'high',
    isLow: (key) => result(key)?.position === 'low',
    takes: (key) => taken.find((item) => item.key === key),
  };
}
