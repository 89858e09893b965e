/** Ids of the stretches that a show's last week and its rehearsal are written as: one of each, so that a new one replaces the old. */
export function stretchIds(show: string): {
  readonly load: string;
  readonly day: string;
  readonly rehearsal: string;
} {
  return { load: `load ${show}`, day: `day ${show}`, rehearsal: `rehearsal ${show}` };
}

export type StretchPurpose = keyof ReturnType<typeof stretchIds>;

/** What a stretch of a show was planned for; undefined where it was planned by itself. */
export function stretchPurpose(stretch: string, show: string): StretchPurpose | undefined {
  const ids = stretchIds(show);
  return (['load', 'day', 'rehearsal'] as const).find((purpose) => ids[purpose] === stretch);
}
