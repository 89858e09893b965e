/** How many requests may come at once, and how many more each second. */
export interface Rate {
  readonly burst: number;
  readonly perSecond: number;
}
/** Journals remembered; the longest unseen are forgotten, which only gives them their burst again. */
const MOST_JOURNALS = 10_000;

/** Lets through so many requests of one journal (a token bucket); the clock is handed in. */
export function rateGate(clockMs: () => number, { burst, perSecond }: Rate): (journal: string) => boolean {
  const buckets = new Map<string, { left: number; atMs: number }>();
  return (journal) => {
    const now = clockMs();
    const known = buckets.get(journal) ?? { left: burst, atMs: now };
    const left = Math.min(burst, known.left + ((now - known.atMs) / 1000) * perSecond);
    buckets.delete(journal);
    buckets.set(journal, { left: Math.max(0, left - 1), atMs: now });
    if (buckets.size > MOST_JOURNALS) {
      const oldest = buckets.keys().next().value;
      if (oldest !== undefined) buckets.delete(oldest);
    }
    return left >= 1;
  };
}
