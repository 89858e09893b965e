import { readEstimate } from '#core/body/estimate.ts';
import type { EstimateAnswer, EstimateRequest } from '#core/body/estimate-request.ts';
import type { SimulatedAthlete } from './athlete-simulator.ts';
import {
  filledIntake,
  lineMaintenance,
  practiceForecast,
  recentMass,
  windowMaintenance,
} from './practice.ts';

/** How an estimate stands against the truth of a cohort, and practice beside it. */
export interface EstimateScore {
  readonly athletes: number;
  readonly requests: number;
  readonly milliseconds: number;
  /** Root mean square error of maintenance from the fourth week on, logged kcal. */
  readonly maintenanceKcal: number;
  /** The same of the best moving window, and of a straight line through the whole log. */
  readonly bestWindowKcal: number;
  readonly lineKcal: number;
  /** Share of days on which the 90 % interval of maintenance holds the truth. */
  readonly maintenanceCovered: number;
  /** Root mean square error of mass, days 8 to 28 of the forecast, kg; practice beside it. */
  readonly forecastKg: number;
  readonly practiceKg: number;
  readonly forecastCovered: number;
  readonly fatKg: number;
}

const WINDOWS = [14, 21, 28, 35, 42] as const;
const FIRST_SCORED = 27;
const FORECAST_DAYS = 28;
const FIRST_FORETOLD = 8;
const Q95 = 1.645;

interface Errors {
  readonly maintenance: number[];
  readonly windows: Map<number, number[]>;
  readonly line: number[];
  readonly covered: boolean[];
  readonly forecast: number[];
  readonly practice: number[];
  readonly foretold: boolean[];
  readonly fat: number[];
}

/** Scores whole past and a forecast from four weeks before the end, athlete by athlete. `now` answers milliseconds. */
export function scoreEstimate(
  cohort: readonly SimulatedAthlete[],
  now: () => number = () => 0,
): EstimateScore {
  const errors: Errors = {
    maintenance: [],
    windows: new Map(WINDOWS.map((width) => [width, []])),
    line: [],
    covered: [],
    forecast: [],
    practice: [],
    foretold: [],
    fat: [],
  };
  let milliseconds = 0;
  const ask = (request: EstimateRequest): EstimateAnswer => {
    const from = now();
    const outcome = readEstimate(request);
    milliseconds += now() - from;
    if (!outcome.ok) throw new Error(`${request.id ?? ''}: ${outcome.problem.message}`);
    return outcome.value.answer;
  };
  for (const athlete of cohort) {
    const request: EstimateRequest = { ...athlete.request, days: [...athlete.request.days] };
    scorePast(athlete, ask(request), errors);
    const cut = athlete.truth.length - 1 - FORECAST_DAYS;
    scoreForecast(athlete, cut, ask({ ...request, asOf: request.days[cut]?.date }), errors);
  }
  return {
    athletes: cohort.length,
    requests: 2 * cohort.length,
    milliseconds,
    maintenanceKcal: rootMeanSquare(errors.maintenance),
    bestWindowKcal: Math.min(...[...errors.windows.values()].map(rootMeanSquare)),
    lineKcal: rootMeanSquare(errors.line),
    maintenanceCovered: shareOf(errors.covered),
    forecastKg: rootMeanSquare(errors.forecast),
    practiceKg: rootMeanSquare(errors.practice),
    forecastCovered: shareOf(errors.foretold),
    fatKg: rootMeanSquare(errors.fat),
  };
}

function scorePast({ request, truth }: SimulatedAthlete, answer: EstimateAnswer, errors: Errors): void {
  for (let i = FIRST_SCORED; i < truth.length; i++) {
    const day = answer.days[i];
    const at = truth[i];
    if (!day || !at) throw new Error(`no answer for day ${i}`);
    const spent = weekMean(truth, i);
    const error = day.maintenanceKcal.mean - spent;
    errors.maintenance.push(error);
    errors.covered.push(Math.abs(error) <= Q95 * day.maintenanceKcal.sd);
    errors.fat.push(day.fatKg.mean - at.fatKg);
    const past = request.days.slice(0, i + 1);
    const intake = filledIntake(past);
    for (const [width, list] of errors.windows)
      pushDefined(list, windowMaintenance(past, intake, i, width), spent);
    pushDefined(errors.line, lineMaintenance(past, intake, i), spent);
  }
}

function scoreForecast(
  { request, truth }: SimulatedAthlete,
  cut: number,
  answer: EstimateAnswer,
  errors: Errors,
): void {
  const past = request.days.slice(0, cut + 1);
  const maintenance = windowMaintenance(past, filledIntake(past), cut, 28) ?? Number.NaN;
  const plan = filledIntake(request.days).slice(cut + 1);
  const practice = practiceForecast(recentMass(past, cut), maintenance, plan);
  for (let j = FIRST_FORETOLD - 1; j < FORECAST_DAYS; j++) {
    const mass = answer.forecast[j]?.massKg;
    const at = truth[cut + 1 + j]?.massKg;
    if (!mass || at === undefined) throw new Error(`no forecast for day ${j}`);
    errors.forecast.push(mass.mean - at);
    errors.foretold.push(mass.q05 <= at && at <= mass.q95);
    const guess = practice[j] ?? Number.NaN;
    if (Number.isFinite(guess)) errors.practice.push(guess - at);
  }
}

function weekMean(truth: SimulatedAthlete['truth'], upTo: number): number {
  const week = truth.slice(upTo - 6, upTo + 1);
  return week.reduce((sum, { maintenanceLoggedKcal }) => sum + maintenanceLoggedKcal, 0) / week.length;
}

function pushDefined(list: number[], guess: number | undefined, truth: number): void {
  if (guess !== undefined) list.push(guess - truth);
}

function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}

function shareOf(values: readonly boolean[]): number {
  return values.filter(Boolean).length / values.length;
}
