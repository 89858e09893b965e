/**
 * One fact, written once and never changed. A correction is a new entry that `replaces` an old one; so is a removal.
 */
export interface Entry {
  /** Unique text. */
  readonly id: string;
  /** Hybrid logical clock as text that sorts (see stamp.ts). */
  readonly stamp: string;
  /** Which device wrote it. */
  readonly device: string;
  /** A fact in the past, such as "meal-eaten". Kinds that are not known here are kept and passed on. */
  readonly kind: string;
  /** Version of the kind's schema; absent means 1. */
  readonly version?: number;
  /** Prep day "YYYY-MM-DD" it belongs to; a prep day runs from waking to sleep. */
  readonly day: string;
  /** When it happened, RFC 3339 with the local offset. */
  readonly at: string;
  /** IANA time zone name of the place, such as "Europe/Lisbon". */
  readonly zone: string;
  readonly data: { readonly [field: string]: unknown };
  /** The entry this one corrects or removes. */
  readonly replaces?: string;
}

/** A removal is a correction too: an entry of this kind with the removed one in `replaces`. */
export const REMOVED = 'entry-removed';
