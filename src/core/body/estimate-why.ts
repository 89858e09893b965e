import { roundTo } from '#core/units/rounding.ts';
import type { BodyEstimate } from './estimate-body.ts';
import type { EstimateAnswer, EstimateRequest } from './estimate-request.ts';
import { STATE } from './state-layout.ts';
import { count, kcal, signed } from './why-words.ts';
import { doubtWhy, logWhy } from './log-why.ts';

export interface WhyInput {
  readonly request: EstimateRequest;
  readonly answer: EstimateAnswer;
  readonly estimate: BodyEstimate;
  readonly smooth: boolean;
}

/** Days over which the sentences hold food against the scale. */
const LOOK_BACK_DAYS = 28;

/** Plain sentences with the numbers that decided the estimate, most telling first (EST-14). */
export function estimateWhy(input: WhyInput): string[] {
  return [
    ...balanceWhy(input),
    ...compositionWhy(input),
    ...forecastWhy(input),
    ...logWhy(input),
    ...doubtWhy(input),
    ...modelWhy(input),
  ];
}

function balanceWhy({ answer, estimate }: WhyInput): string[] {
  const last = answer.days.at(-1);
  const from = answer.days.at(-LOOK_BACK_DAYS) ?? answer.days[0];
  if (!last || !from) return [];
  const { mean, sd } = last.maintenanceKcal;
  const spent = `On ${last.date} maintenance is ${kcal(mean)} a day as logged, give or take ${kcal(sd)} (1 sd).`;
  const lived = estimate.lived.slice(0, answer.days.length).slice(-LOOK_BACK_DAYS);
  const logged = lived.filter(({ basis }) => basis === 'logged');
  if (logged.length === 0)
    return [spent, 'No intake was logged in the last 28 days, so it rests on size and weight alone.'];
  const eaten = logged.reduce((sum, { load }) => sum + load.energyKcal, 0) / logged.length;
  const moved = last.massKg.mean - from.massKg.mean;
  const fat = last.fatKg.mean - from.fatKg.mean;
  return [
    spent,
    `From ${from.date} to ${last.date} the log averages ${kcal(eaten)} over ${count(logged.length, 'logged day')}, while whole-body mass is believed to have moved by ${signed(moved, 2)} kg and fat by ${signed(fat, 2)} kg.`,
  ];
}

function compositionWhy({ answer, estimate }: WhyInput): string[] {
  const last = answer.days.at(-1);
  if (!last) return [];
  const { massKg, fatKg } = last;
  const percent = (100 * fatKg.mean) / massKg.mean;
  const lean = leanShareOf(estimate);
  const fat = `Fat is ${roundTo(fatKg.mean, 1)} kg (${roundTo(percent, 1)} % of ${roundTo(massKg.mean, 1)} kg), give or take ${roundTo(fatKg.sd, 1)} kg.`;
  return [
    fat,
    `At this leanness about ${roundTo(100 * lean.mean, 0)} % of tissue lost is lean (90 %: ${roundTo(100 * lean.low, 0)} to ${roundTo(100 * lean.high, 0)} %), learnt from the log and from published preparations of people who lift.`,
  ];
}

/** Lean share of the next kilogram of tissue: 10.4 m / (10.4 m + F), with m and F as believed. */
function leanShareOf({ posterior }: BodyEstimate): { mean: number; low: number; high: number } {
  let multiple = 0;
  let square = 0;
  let fatKg = 0;
  for (const { weight, belief } of posterior.members) {
    const at = belief.mean[STATE.partition] ?? 0;
    multiple += weight * at;
    square += weight * (at * at + (belief.covariance[STATE.partition * belief.size + STATE.partition] ?? 0));
    fatKg += weight * Math.max(1.5, belief.mean[STATE.fat] ?? 0);
  }
  const sd = Math.sqrt(Math.max(0, square - multiple * multiple));
  const share = (m: number): number => (10.4 * m) / (10.4 * m + fatKg);
  return {
    mean: share(multiple),
    low: share(Math.max(-0.1, multiple - 1.645 * sd)),
    high: share(multiple + 1.645 * sd),
  };
}

function forecastWhy({ answer, estimate }: WhyInput): string[] {
  const end = answer.forecast.at(-1);
  const last = answer.days.at(-1);
  if (!end || !last) return [];
  const plan = estimate.lived.slice(answer.days.length);
  const planned = plan.filter(({ basis }) => basis === 'logged');
  const eaten =
    planned.length > 0
      ? `averages ${kcal(planned.reduce((sum, { load }) => sum + load.energyKcal, 0) / planned.length)} over ${count(planned.length, 'planned day')}`
      : 'states no intake, so the recent average goes on';
  return [
    `The plan to ${end.date} ${eaten}; it leads to ${roundTo(end.massKg.mean, 1)} kg (90 %: ${roundTo(end.massKg.q05, 1)} kg to ${roundTo(end.massKg.q95, 1)} kg), of it ${roundTo(end.fatKg.mean, 1)} kg fat.`,
  ];
}

function modelWhy({ estimate, smooth }: WhyInput): string[] {
  let before = 0;
  for (const [k, member] of estimate.run.members.entries())
    if (member.hypothesis.weighed === 'before-food') before += estimate.run.weights[k] ?? 0;
  const timing = `The readings make it ${roundTo(100 * before, 0)} % likely that the scale is read before the day's food.`;
  const model =
    'Expenditure follows the dynamic adult model (hall-2011): it falls with mass and with the cut, and glycogen and water follow carbohydrate and sodium.';
  const known = smooth
    ? 'Each day is seen in the light of all days up to the last.'
    : 'Each day is what could be known on that day, without later readings.';
  return [timing, model, known];
}
