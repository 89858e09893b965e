/**
 * Small texts kept beside the journal: which journal is open, drafts, when a copy was last taken. Written at once,
 * so they outlive a killed tab. Where the browser keeps nothing (private windows, storage full) they last as long as
 * the tab; `set` answers whether it was kept.
 */
const inTab = new Map<string, string>();
const PREFIX = 'stagewright/';

export const localMemory = {
  get(key: string): string | undefined {
    try {
      return localStorage.getItem(PREFIX + key) ?? inTab.get(key);
    } catch {
      return inTab.get(key);
    }
  },
  set(key: string, text: string): boolean {
    try {
      localStorage.setItem(PREFIX + key, text);
      inTab.delete(key);
      return true;
    } catch {
      inTab.set(key, text);
      return false;
    }
  },
  drop(key: string): void {
    inTab.delete(key);
    try {
      localStorage.removeItem(PREFIX + key);
    } catch {
      // Nothing was kept there either.
    }
  },
};
