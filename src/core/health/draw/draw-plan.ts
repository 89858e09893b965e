import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { SourceKey } from '#core/tables/sources.ts';
import type { Product } from '../supplements/read-label.ts';
import type { Regimen } from '../supplements/regimens.ts';

export type PlannedDraw = DataOf<'draw-planned'>;

export interface DrawPlanRequest {
  readonly today: string;
  readonly draw: PlannedDraw;
  readonly products: ReadonlyMap<string, Product>;
  readonly regimens: readonly Regimen[];
  /** Prescribed medicines: never paused here. */
  readonly medicines: readonly { readonly name: string; readonly at: string }[];
  /** The draw before, whose hour and laboratory this one should share. */
  readonly previous?: { readonly date: string; readonly time?: string; readonly laboratory?: string };
}

/** A pause to write into a regimen: from its first day without a dose to the draw's day, which it includes. */
export interface RegimenPause {
  readonly regimen: string;
  readonly from: string;
  readonly until: string;
  readonly reason: string;
}

/** One line for the run sheet of a day. */
export interface DrawItem {
  readonly day: string;
  readonly at?: string;
  readonly kind: 'training' | 'pause' | 'food' | 'drink' | 'morning' | 'draw' | 'after' | 'tell';
  readonly words: string;
  readonly source: SourceKey;
}

export interface DrawPlan {
  /** In order of day and time; lines of days gone by are left out, and said in `cautions`. */
  readonly items: readonly DrawItem[];
  /** Pauses of regimens to write into the journal. */
  readonly pauses: readonly RegimenPause[];
  readonly cautions: readonly { readonly words: string; readonly source: SourceKey }[];
  readonly why: readonly string[];
}

/** Whether a panel measures one of these; everything, where it is not known what will be measured. */
export type Concerns = (keys: readonly string[]) => boolean;
