import type { ComponentType } from 'preact';

export interface PlaceProps {
  /** What stands behind the place in the address: "#/kitchen/batch/new" gives ["batch", "new"]. */
  readonly path: readonly string[];
}

/** A place's file has one default export, its component. */
export interface PlaceModule {
  readonly default: ComponentType<PlaceProps>;
}

export interface Place {
  readonly path: string;
  readonly title: string;
  readonly load: () => Promise<PlaceModule>;
}

/** The seven places in the order of the day's use. */
const ORDER: readonly Omit<Place, 'load'>[] = [
  { path: 'day', title: 'Day' },
  { path: 'kitchen', title: 'Kitchen' },
  { path: 'gym', title: 'Gym' },
  { path: 'body', title: 'Body' },
  { path: 'course', title: 'Course' },
  { path: 'health', title: 'Health' },
  { path: 'journal', title: 'Journal' },
];

// Vite finds the files when it builds; a place without a file is not listed, so no dead door is ever shown.
const MODULES = import.meta.glob<PlaceModule>('../places/*/*-place.tsx');

export const PLACES: readonly Place[] = ORDER.flatMap((place) => {
  const load = MODULES[`../places/${place.path}/${place.path}-place.tsx`];
  return load === undefined ? [] : [{ ...place, load }];
});
