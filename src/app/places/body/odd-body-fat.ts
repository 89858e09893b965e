/** Body fat below which nobody is known to live in health, and above which a slip is likelier; common practice, no source. */
const ORDINARY = { male: { low: 4, high: 50 }, female: { low: 10, high: 55 } } as const;

/** What is asked back about a reading that few bodies have; undefined where it is ordinary. It is asked, never changed. */
export function oddBodyFat(percent: number, sex: 'male' | 'female' | undefined): string | undefined {
  const { low, high } = ORDINARY[sex ?? 'male'];
  if (percent < low)
    return `${percent} % is less than a body keeps in health (about ${low} %). A slip of the finger, or a method that reads low? If it is true, see a doctor.`;
  if (percent > high)
    return `${percent} % is more than an athlete in preparation carries. A slip of the finger?`;
  return undefined;
}
