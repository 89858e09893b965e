/**
 * The invented athlete of the demonstration: an invented person in an invented town. Every figure under demo/ is made
 * up; none is evidence of anything.
 */
export const story = {
  name: 'Runa',
  birthYear: 1995,
  sex: 'female',
  heightCm: 167,
  town: 'Hallmouth',
  device: 'demo01',
  /** First day of the preparation, 16 weeks before the story's today. */
  begins: '2026-11-12',
  weeks: 16,
  /** The story's today: a day that runs late. */
  today: '2027-03-04',
  /** The clock when the demonstration opens: the first meal was planned hours ago. */
  opensAt: '12:10',
  show: { id: 'spring-show', name: 'Hallmouth Spring Classic', date: '2027-05-01' },
} as const;

/** Where the reader's clock stands, so that the story's local times are the reader's local times. */
export interface StoryClock {
  readonly offsetMinutes: number;
  readonly zone: string;
}

export const utc: StoryClock = { offsetMinutes: 0, zone: 'UTC' };
