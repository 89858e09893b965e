import type { GenericSchema, InferOutput } from 'valibot';
import { athleteKinds } from './athlete.ts';
import { bodyKinds } from './body.ts';
import { courseKinds } from './course.ts';
import { dayKinds } from './day.ts';
import { gymKinds } from './gym.ts';
import { healthKinds } from './health.ts';
import { kitchenKinds } from './kitchen.ts';
import { lendingKinds } from './lending.ts';
import { weekKinds } from './week.ts';
import { seasonKinds } from './season.ts';

/** Every kind of fact this version knows, with the schema of its data (version 1 unless upgrades.ts says more). */
export const kinds = {
  ...athleteKinds,
  ...kitchenKinds,
  ...dayKinds,
  ...bodyKinds,
  ...gymKinds,
  ...healthKinds,
  ...courseKinds,
  ...weekKinds,
  ...seasonKinds,
  ...lendingKinds,
} satisfies Record<string, GenericSchema>;

export type KnownKind = keyof typeof kinds;
export type DataOf<Kind extends KnownKind> = InferOutput<(typeof kinds)[Kind]>;

export function isKnownKind(kind: string): kind is KnownKind {
  return Object.hasOwn(kinds, kind);
}
