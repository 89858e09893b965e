import type { SourceKey } from '#core/tables/sources.ts';
import { addDays, daysBetween } from '#core/units/civil-date.ts';
import type { Sex } from '../equations/filtration.ts';
import type { PanelReading } from '../panel/read-panel.ts';
import { sayValue, type PanelResult } from '../panel/reading.ts';
import { meanOf, type FeltDay } from './recovery-notes.ts';

/** What the screen looks at; everything but sex and day may be unknown. */
export interface ScreenRequest {
  readonly sex: Sex;
  readonly today: string;
  /** Days with notes, at least the last two weeks of them. */
  readonly felt: readonly FeltDay[];
  /** First days of bleeding, ascending, and a note of their absence. */
  readonly cycles?: { readonly began: readonly string[]; readonly absentNotedOn?: string };
  /** Hormones that hide the cycle are taken. */
  readonly contraceptive?: boolean;
  /** Mean energy availability and over how many days, kcal per kg fat-free mass a day. */
  readonly availability?: { readonly kcalPerKgFfm: number; readonly days: number };
  /** The newest panel, as read. */
  readonly panel?: PanelReading;
}

/**
 * `primary`, `secondary`: indicators of the published clinical tool (stellingwerff-2023). `possible`: signs that many
 * things can cause. `exposure`: too little energy itself, not yet its effect.
 */
export interface Sign {
  readonly sign: string;
  readonly weight: 'primary' | 'secondary' | 'possible' | 'exposure';
  readonly words: string;
  readonly source: SourceKey;
}

export interface EnergyScreen {
  readonly level: 'see a physician' | 'watch' | 'nothing noted' | 'too little noted';
  readonly signs: readonly Sign[];
  /** What was not known, so not looked at. */
  readonly notLookedAt: readonly string[];
  readonly caution: string;
  readonly why: readonly string[];
}

const LOOK_BACK_DAYS = 14;
const ENOUGH_DAYS = 5;
const ABSENT_DAYS = 90;
const LONG_CYCLE_DAYS = 35;
const SLOW_HEART_BPM = 40;
const LOW_SCORE = 2;
const SHORT_SLEEP_HOURS = 6;
/** kcal per kg fat-free mass a day; for men no threshold is agreed, reviews suggest staying above 25. */
const AVAILABILITY: Readonly<Record<Sex, { readonly below: number; readonly source: SourceKey }>> = {
  female: { below: 30, source: 'loucks-2003' },
  male: { below: 25, source: 'fagerberg-2018' },
};

/**
 * A screen for too little energy by published criteria (HLT-61, HLT-62). It finds reasons to see a physician; it diagnoses
 * nothing, and it computes no score: the published tool is for clinicians.
 */
export function energyScreen(request: ScreenRequest): EnergyScreen {
  const recent = request.felt.filter(
    ({ day }) => day > addDays(request.today, -LOOK_BACK_DAYS) && day <= request.today,
  );
  const parts = [
    ...(request.sex === 'female' ? [cycleSigns(request)] : []),
    bloodSigns(request),
    exposureSigns(request),
    feltSigns(recent),
  ];
  const signs = parts.flatMap((part) => part.signs);
  const notLookedAt = parts.flatMap((part) => part.unknown);
  const level = levelOf(
    signs,
    parts.some(({ unknown }) => unknown.length === 0),
  );
  return {
    level,
    signs,
    notLookedAt,
    caution:
      'This is a screen, not a diagnosis. These signs have other causes too, pregnancy and illness among them; see a physician, and one who knows eating disorders if food rules the day. Eating more is the treatment, not another supplement.',
    why: [
      ...signs.map(({ words }) => words),
      ...(notLookedAt.length > 0 ? [`Not known, so not looked at: ${notLookedAt.join('; ')}.`] : []),
    ],
  };
}

interface Part {
  readonly signs: readonly Sign[];
  readonly unknown: readonly string[];
}

/** One weighty sign, two indicators or three possible ones are a reason to see a physician: our own careful rule. */
function levelOf(signs: readonly Sign[], looked: boolean): EnergyScreen['level'] {
  const count = (weight: Sign['weight']) => signs.filter((sign) => sign.weight === weight).length;
  const indicators = count('secondary') + count('exposure');
  const slowHeart = signs.some(({ sign }) => sign === 'slow heart');
  if (count('primary') > 0 || slowHeart || indicators >= 2 || indicators + count('possible') >= 3)
    return 'see a physician';
  if (signs.length > 0) return 'watch';
  return looked ? 'nothing noted' : 'too little noted';
}

function cycleSigns({ today, cycles, contraceptive }: ScreenRequest): Part {
  if (contraceptive) return { signs: [], unknown: ['the cycle, which a hormonal contraceptive hides'] };
  const last = cycles?.began.at(-1);
  if (cycles?.absentNotedOn !== undefined) {
    return one(
      'no menses',
      'primary',
      `No menses for three months, noted on ${cycles.absentNotedOn}. A pregnancy test first, then a physician.`,
    );
  }
  if (last === undefined) return { signs: [], unknown: ['the cycle'] };
  const since = daysBetween(last, today);
  if (since >= ABSENT_DAYS) {
    return one(
      'no menses',
      'primary',
      `No menses noted for ${since} days. A pregnancy test first, then a physician.`,
    );
  }
  const before = cycles?.began.at(-2);
  const length = before === undefined ? since : Math.max(since, daysBetween(before, last));
  if (length <= LONG_CYCLE_DAYS) return { signs: [], unknown: [] };
  return one('long cycle', 'secondary', `${length} days between menses, more than ${LONG_CYCLE_DAYS}.`);
}

function one(sign: string, weight: Sign['weight'], words: string): Part {
  return { signs: [{ sign, weight, words, source: 'stellingwerff-2023' }], unknown: [] };
}

function bloodSigns({ sex, panel }: ScreenRequest): Part {
  if (!panel) return { signs: [], unknown: ['blood'] };
  const find = (key: string) => panel.results.find(({ read }) => read.known?.analyte.key === key);
  const signs: Sign[] = [];
  const add = (sign: string, weight: Sign['weight'], words: string) => {
    signs.push({ sign, weight, words, source: 'stellingwerff-2023' });
  };
  const low = (key: string, sign: string) => {
    const result = find(key);
    if (!result) return;
    if (result.position === 'low') add(sign, 'primary', `${sayValue(result.read)} is below its interval.`);
    else if (inLowestQuarter(result))
      add(sign, 'primary', `${sayValue(result.read)} is in the lowest quarter of its interval.`);
  };
  if (sex === 'male') {
    low('testosterone', 'low testosterone');
    low('freeTestosterone', 'low free testosterone');
  }
  low('ft3', 'low T3');
  low('t3', 'low T3');
  for (const key of ['ldlCalc', 'cholesterol']) {
    const result = find(key);
    if (result?.position === 'high')
      add('high cholesterol', 'secondary', `${sayValue(result.read)} is above its interval.`);
  }
  return { signs, unknown: [] };
}

function inLowestQuarter({ read, interval, position }: PanelResult): boolean {
  const { low, high } = interval ?? {};
  if (position !== 'in' || low === undefined || high === undefined || read.comparator !== undefined)
    return false;
  return read.value <= low + (high - low) / 4;
}

function exposureSigns({ sex, availability }: ScreenRequest): Part {
  if (!availability) return { signs: [], unknown: ['energy availability'] };
  const { below, source } = AVAILABILITY[sex];
  if (availability.kcalPerKgFfm >= below) return { signs: [], unknown: [] };
  const agreed = sex === 'male' ? ' (for men no threshold is agreed)' : '';
  const words = `Energy availability ${availability.kcalPerKgFfm.toFixed(0)} kcal per kg fat-free mass over ${availability.days} days, below ${below}${agreed}.`;
  return { signs: [{ sign: 'low energy availability', weight: 'exposure', words, source }], unknown: [] };
}

function feltSigns(recent: readonly FeltDay[]): Part {
  const signs: Sign[] = [];
  const mean = (measure: Parameters<typeof meanOf>[1]) => {
    const found = meanOf(recent, measure);
    return found && found.days >= ENOUGH_DAYS ? found.mean : undefined;
  };
  const add = (sign: string, words: string, source: SourceKey = 'mountjoy-2023') => {
    signs.push({ sign, weight: 'possible', words, source });
  };
  const [heart, libido, mood] = [mean('restingHeartRateBpm'), mean('libido'), mean('mood')];
  const [hours, quality] = [mean('sleepHours'), mean('sleepQuality')];
  if (heart !== undefined && heart < SLOW_HEART_BPM) {
    add('slow heart', `Resting heart rate ${heart.toFixed(0)} a minute, below ${SLOW_HEART_BPM}.`);
  }
  if (libido !== undefined && libido <= LOW_SCORE)
    add('low libido', `Libido ${libido.toFixed(1)} of 5 over two weeks.`);
  if (mood !== undefined && mood <= LOW_SCORE) {
    add(
      'low mood',
      `Mood ${mood.toFixed(1)} of 5 over two weeks. If it is dark, talk to someone today, not after the show.`,
    );
  }
  if ((hours !== undefined && hours < SHORT_SLEEP_HOURS) || (quality !== undefined && quality <= LOW_SCORE)) {
    const slept =
      hours === undefined ? `quality ${quality?.toFixed(1)} of 5` : `${hours.toFixed(1)} h a night`;
    add('poor sleep', `Sleep: ${slept} over two weeks.`);
  }
  const known = [heart, libido, mood, hours, quality].some((value) => value !== undefined);
  return {
    signs,
    unknown: known ? [] : ['resting heart rate, libido, mood and sleep of the last two weeks'],
  };
}
