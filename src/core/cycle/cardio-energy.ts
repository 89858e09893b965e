import type { DataOf } from '../journal/kinds/registry.ts';
import { legCyclingCost, WORK_RATE_PER_WATT } from '../science/cycling-cost.ts';
import { kcalPerMinuteOfOxygen, MET_OXYGEN, netCostKcal } from '../science/metabolic-equivalent.ts';
import { runningCost } from '../science/running-cost.ts';
import { steppingCost } from '../science/stepping-cost.ts';
import type { Studied } from '../science/studied-range.ts';
import { walkingCost } from '../science/walking-cost.ts';
import { activityByCode } from '../tables/activity-mets.ts';
import type { Kilocalories, Kilograms } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';

type CardioDone = DataOf<'cardio-done'>;

/** What a session cost beyond what the same minutes would have cost at rest. */
export interface CardioEnergy {
  readonly netKcal: Kilocalories;
  /** What it was computed by: a metabolic equation, or a row of the activity table. */
  readonly by: string;
  /** Key of the source list. */
  readonly source: string;
  /** Half width of a 90 % interval, and what makes it. */
  readonly within: Kilocalories;
  readonly spread: string;
}

/**
 * Standard deviation of one session's net energy as a share of it. The equations' own error is about 7 % of the oxygen
 * used (from memory), more with hands on a rail; a table row holds any pace its words allow (our own mark, no source).
 */
const EQUATION_SHARE = 0.1;
const TABLE_SHARE = 0.25;
/** Half width of a 90 % interval in standard deviations. */
const NINETY = 1.645;

function withSpread(
  answer: Omit<CardioEnergy, 'within' | 'spread'>,
  share: number,
  spread: string,
): CardioEnergy {
  return { ...answer, within: roundTo(NINETY * share * answer.netKcal, 0), spread };
}

const MET_RULES: readonly { readonly words: RegExp; readonly code: string }[] = [
  { words: /stair|step|climb/i, code: '02065' },
  { words: /ellip|cross/i, code: '02048' },
  { words: /run|jog/i, code: '12030' },
  { words: /bike|bicycle|cycl|ergometer/i, code: '01220' },
  { words: /walk|treadmill|hike/i, code: '17190' },
];
/** Rows of the table for walking uphill, by the grade they begin at, percent. */
const UPHILL: readonly { readonly fromPercent: number; readonly code: string }[] = [
  { fromPercent: 11, code: '17036' },
  { fromPercent: 6, code: '17035' },
  { fromPercent: 1, code: '17034' },
];
/** Faster than this a treadmill is run on, unless the activity says walking. */
const WALKING_MOST_M_PER_MINUTE = 100;

/**
 * Net energy of a logged session (RUN-21): the metabolic equation that fits what was noted, else the activity table by
 * the session's words, less rest. Undefined where the words name no activity of the table: it is not guessed.
 */
export function cardioEnergy(done: CardioDone, massKg: Kilograms): CardioEnergy | undefined {
  return byEquation(done, massKg) ?? byTable(done, massKg);
}

function byEquation(done: CardioDone, massKg: Kilograms): CardioEnergy | undefined {
  const { minutes, watts, stepsPerMinute, stepHeightM, speedKmh, gradePercent = 0 } = done;
  const answer = (oxygen: Studied<number>, by: string): CardioEnergy | undefined =>
    oxygen.studied
      ? withSpread(
          {
            netKcal: roundTo(minutes * kcalPerMinuteOfOxygen(oxygen.value - MET_OXYGEN, massKg), 0),
            by,
            source: 'acsm-2018',
          },
          EQUATION_SHARE,
          'People differ from the equation by about a tenth, more with hands on a rail.',
        )
      : undefined;
  if (watts !== undefined && watts > 0)
    return answer(legCyclingCost(WORK_RATE_PER_WATT * watts, massKg), 'the equation of cycling');
  if (stepsPerMinute !== undefined && stepHeightM !== undefined)
    return answer(steppingCost(stepsPerMinute, stepHeightM), 'the equation of stepping');
  if (speedKmh === undefined) return undefined;
  const going = { metresPerMinute: (1000 * speedKmh) / 60, grade: gradePercent / 100 };
  const walks = going.metresPerMinute <= WALKING_MOST_M_PER_MINUTE && !/run|jog/i.test(done.activity);
  return walks
    ? answer(walkingCost(going), 'the equation of walking')
    : answer(runningCost(going), 'the equation of running');
}

function byTable(done: CardioDone, massKg: Kilograms): CardioEnergy | undefined {
  const { activity, minutes, gradePercent = 0 } = done;
  const rule = MET_RULES.find(({ words }) => words.test(activity));
  if (rule === undefined) return undefined;
  const uphill = rule.code === '17190' && UPHILL.find(({ fromPercent }) => gradePercent >= fromPercent);
  const row = activityByCode(uphill ? uphill.code : rule.code);
  if (row === undefined) return undefined;
  return withSpread(
    {
      netKcal: roundTo(netCostKcal(row.mets, massKg, minutes), 0),
      by: `${row.mets} METs (${row.activity})`,
      source: row.source,
    },
    TABLE_SHARE,
    'A table row holds every pace its words allow: about a quarter either way.',
  );
}
