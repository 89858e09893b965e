import type { Entry } from '#core/journal/entry.ts';
import type { Tabs } from './tabs.ts';

let line: Tabs | undefined;

/** The line to the other tabs of the open journal. */
export const openTabs = {
  connect(tabs: Tabs): void {
    line?.close();
    line = tabs;
  },
  tell(entries: readonly Entry[]): void {
    line?.tell(entries);
  },
};
