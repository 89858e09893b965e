import type { EstimateDay, EstimateRequest } from '../body/estimate-request.ts';
import type { DataOf } from '../journal/kinds/registry.ts';
import type { Fact, Ledger } from '../journal/ledger.ts';
import { sumNutrients } from '../kitchen/nutrients.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import { addDays, daysBetween } from '../units/civil-date.ts';
import type { Kilograms, Percent } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import { cardioEnergy } from './cardio-energy.ts';
import { creatineStart } from './creatine-start.ts';
import type { ReadItem } from './day-sheet.ts';
import { strengthSince } from './strength-now.ts';
import { fatOfFolds, fatOfGirths, type FatReading, type Measured } from './measured-fat.ts';

export interface DayWeight {
  readonly day: string;
  readonly massKg: Kilograms;
  readonly entry: string;
}

/** Days after the last row up to which the estimate can be asked; beyond them it stands at the last row. */
const LONGEST_SILENCE_DAYS = 60;
/** Shares of energy on a mixed diet, where only the energy of a day is known. Common practice, no source. */
const MIXED = { protein: 0.25, carbohydrate: 0.45, fat: 0.3 } as const;
/** A pause this long says nothing of the present body: the log begins after it. */
const LONGEST_GAP_DAYS = 400;

/** The weigh-in that counts on each day up to `until`, oldest first. */
export function weighInsOf(ledger: Ledger, until: string): readonly DayWeight[] {
  return firstOfDays(ledger.of('body-weighed').filter((fact) => fact.day <= until)).map((fact) => ({
    day: fact.day,
    massKg: fact.data.massKg,
    entry: fact.entry.id,
  }));
}

/**
 * What the estimate is asked, as the journal has it up to a day (RUN-20): the first ordinary weigh-in of a day, food
 * where the day was totalled or closed as complete, net energy of cardio, body fat as measured or as folds and tape
 * give it, the onset of menses. A day with only some of its meals is not a log of the day.
 */
export function bodyLog(ledger: Ledger, until: string, read: ReadItem): Outcome<EstimateRequest> {
  const who = ledger.latest('athlete-described')?.data;
  if (!who)
    return refused(
      'body/nobody',
      'athlete',
      'The journal does not say yet who prepares.',
      'Fill in the first start: sex, height and year of birth decide the figures.',
    );
  const first = weighInsOf(ledger, until)[0]?.day;
  if (first === undefined)
    return refused(
      'body/never-weighed',
      'weighed',
      'There is no weigh-in yet.',
      'Weigh in on a few mornings; the estimate begins with the first.',
    );
  const age = Number(until.slice(0, 4)) - who.birthYear;
  const days = sinceLastPause(daysOf(ledger, until, first, read, { ...who, age }));
  const creatineFrom = creatineStart(ledger, first, until);
  const last = days.at(-1)?.date ?? until;
  const strength = strengthSince(ledger, days[0]?.date ?? first, until);
  return answered({
    athlete: { sex: who.sex, heightCm: who.heightCm, age, ...(creatineFrom && { creatineFrom }) },
    days,
    ...(strength && {
      leanEvidence: {
        strengthKept: roundTo(within(strength.kept, 0.3, 2), 3),
        sd: roundTo(within(strength.sd, 0.005, 1), 3),
      },
    }),
    asOf: daysBetween(last, until) > LONGEST_SILENCE_DAYS ? last : until,
  });
}

function daysOf(ledger: Ledger, until: string, first: string, read: ReadItem, who: Measured): EstimateDay[] {
  const rows = new Map<string, EstimateDay>();
  const row = (day: string): EstimateDay => {
    const known = rows.get(day) ?? { date: day };
    rows.set(day, known);
    return known;
  };
  const within = ({ day }: { readonly day: string }) => day >= first && day <= until;
  for (const fact of firstOfDays(ledger.of('body-weighed').filter(within))) {
    const { massKg, circumstances } = fact.data;
    const line = row(fact.day);
    line.weightKg = massKg;
    if (circumstances?.includes('travelling') || circumstances?.includes('other scale'))
      line.travelling = true;
  }
  for (const fact of ledger.of('day-closed').filter(within))
    if (fact.data.complete) addIntake(row(fact.day), eatenOn(ledger, fact.day, read), false);
  for (const { data } of ledger.of('intake-totalled'))
    if (within({ day: data.of })) addIntake(row(data.of), intakeOf(data), data.fasted === true);
  addCardio(ledger, rows, row, within);
  addBodyFat(ledger, row, within, who);
  for (const fact of ledger.of('cycle-noted').filter(within))
    if (fact.data.event === 'menses began') row(fact.day).cycleDay = 1;
  return [...rows.values()].sort((a, b) => (a.date < b.date ? -1 : 1));
}

/** What the estimate takes of it. */
function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

/** A fast that was said to be one, and meals closed as all there were, stand however little they hold. */
function addIntake(line: EstimateDay, intake: NonNullable<EstimateDay['intake']>, fasted: boolean): void {
  line.intake = intake;
  if (fasted || intake.energyKcal > 0) line.confirmed = true;
  else delete line.confirmed;
}

type Within = (fact: { readonly day: string }) => boolean;
type RowOf = (day: string) => EstimateDay;

function addCardio(ledger: Ledger, rows: ReadonlyMap<string, EstimateDay>, row: RowOf, within: Within): void {
  const weights = [...rows.values()].filter((one) => one.weightKg !== undefined);
  const massOn = (day: string): Kilograms =>
    (weights.findLast((one) => one.date <= day) ?? weights[0])?.weightKg ?? 0;
  for (const fact of ledger.of('cardio-done').filter(within)) {
    const energy = cardioEnergy(fact.data, massOn(fact.day));
    if (energy === undefined) continue;
    const line = row(fact.day);
    line.cardioKcal = (line.cardioKcal ?? 0) + energy.netKcal;
  }
}

/** A measured body fat counts before folds of the same day, and those before tape. */
function addBodyFat(ledger: Ledger, row: RowOf, within: Within, who: Measured): void {
  const take = (day: string, reading: FatReading, method: string): void => {
    if ('percent' in reading && believable(reading.percent))
      row(day).bodyFat = { percent: reading.percent, method };
  };
  for (const fact of ledger.of('girths-measured').filter(within))
    take(fact.day, fatOfGirths(fact.data, who), 'tape');
  for (const fact of ledger.of('folds-measured').filter(within))
    take(fact.day, fatOfFolds(fact.data, who), 'skinfold');
  for (const fact of ledger.of('body-fat-measured').filter(within))
    row(fact.day).bodyFat = { percent: fact.data.percent, method: fact.data.method };
}

/** The estimate takes readings between 1 and 70 %. */
function believable(percent: Percent): boolean {
  return percent >= 1 && percent <= 70;
}

function intakeOf(total: DataOf<'intake-totalled'>): NonNullable<EstimateDay['intake']> {
  const { energyKcal, sodiumMg } = total;
  return {
    energyKcal,
    proteinG: total.proteinG ?? roundTo((MIXED.protein * energyKcal) / 4, 0),
    carbohydrateG: total.carbohydrateG ?? roundTo((MIXED.carbohydrate * energyKcal) / 4, 0),
    fatG: total.fatG ?? roundTo((MIXED.fat * energyKcal) / 9, 0),
    ...(sodiumMg !== undefined && { sodiumMg }),
  };
}

function eatenOn(ledger: Ledger, day: string, read: ReadItem): NonNullable<EstimateDay['intake']> {
  const meals = ledger.onDay(day).filter((fact): fact is Fact<'meal-eaten'> => fact.kind === 'meal-eaten');
  const amounts = meals.flatMap((meal) =>
    meal.data.items.flatMap((item) => read(item, meal.epochMs)?.amount ?? []),
  );
  const { nutrients, atLeast } = sumNutrients(amounts);
  const sodium = atLeast.includes('sodiumMg') ? undefined : nutrients.sodiumMg;
  return {
    energyKcal: roundTo(nutrients.energyKcal, 1),
    proteinG: roundTo(nutrients.proteinG, 1),
    carbohydrateG: roundTo(nutrients.carbohydrateG, 1),
    fatG: roundTo(nutrients.fatG, 1),
    ...(sodium !== undefined && { sodiumMg: roundTo(sodium, 0) }),
  };
}

function sinceLastPause(days: readonly EstimateDay[]): EstimateDay[] {
  let from = 0;
  for (const [index, { date }] of days.entries()) {
    const before = days[index - 1]?.date;
    if (before !== undefined && addDays(before, LONGEST_GAP_DAYS) < date) from = index;
  }
  return days.slice(from);
}

/** The first reading of each day that was not taken clothed or after food; the first of all where there is no other. */
function firstOfDays(facts: readonly Fact<'body-weighed'>[]): Fact<'body-weighed'>[] {
  const ordinary = ({ data }: Fact<'body-weighed'>) =>
    !(data.circumstances?.includes('clothed') || data.circumstances?.includes('after food'));
  const chosen = new Map<string, Fact<'body-weighed'>>();
  for (const fact of facts) {
    const before = chosen.get(fact.day);
    if (!before || (!ordinary(before) && ordinary(fact))) chosen.set(fact.day, fact);
  }
  return [...chosen.values()];
}
