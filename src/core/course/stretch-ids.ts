/** Ids of the stretches that a show's last week and its rehearsal are written as: one of each, so that a new one replaces the old. */
export function stretchIds(show: string): {
  readonly load: string;
  readonly day: string;
  readonly rehearsal: string;
} {
  return { load: `load ${show}`, day: `day ${show}`, rehearsal: `rehearsal ${show}` };
}
