import { formatClock } from '../units/clock.ts';
import { roundTo } from '../units/rounding.ts';
import type { DayAnswer } from './day-answer.ts';
import type { DaySituation } from './day-situation.ts';
import type { PosedPlates } from './pose-plates.ts';
import type { Schedule } from './schedule.ts';

type Answered = Omit<DayAnswer, 'why' | 'meals'> & { readonly meals: readonly DayAnswer['meals'][number][] };

/** Off by less than this a day's macro is on target (common practice, no source). */
const ON_TARGET_G = 3;
const MOST_LEFT_OUT = 6;

/** Why this plan: what the clock allowed, how the carbohydrate was laid, what is missing and why, how sure it is. */
export function whyPlan(
  day: DaySituation,
  schedule: Schedule,
  posed: PosedPlates,
  answer: Answered,
  braked: boolean,
): string[] {
  return [
    ...countSentences(day, schedule, answer),
    ...trainingSentences(day, answer),
    ...pinnedSentences(day),
    ...guessSentences(day),
    ...missingSentences(day, schedule, answer),
    ...posed.notes,
    ...unusableSentence(posed),
    ...unknownSentences(day),
    proofSentence(answer),
    ...(braked
      ? [
          `The time of ${day.budgetMs} ms ran out first: this is the best plan found by then, and another run may find another.`,
        ]
      : []),
  ];
}

function countSentences(day: DaySituation, schedule: Schedule, answer: Answered): string[] {
  const toCome = schedule.meals.length;
  const total = toCome + day.eatenAt.length;
  const from = day.now === undefined ? `waking at ${formatClock(day.wake)}` : `now, ${formatClock(day.now)},`;
  const stretch = `between ${from} and sleep at ${formatClock(day.sleep)}, at least ${day.rules.minGapMinutes} minutes apart`;
  if (answer.meals.length < toCome) {
    return [
      `${day.eatenAt.length} eaten today; there is time for ${toCome} more ${stretch}, but nothing to serve.`,
    ];
  }
  const counted = `${total} ${total === 1 ? 'meal' : 'meals'} today: ${day.eatenAt.length} eaten, ${toCome} to come ${stretch}.`;
  if (total >= day.rules.meals.min) return [counted];
  return [counted, `That is fewer than the ${day.rules.meals.min} wanted: the clock fits no more.`];
}

function trainingSentences(day: DaySituation, answer: Answered): string[] {
  if (!day.training) return [];
  const window = `training ${formatClock(day.training.start)} to ${formatClock(day.training.end)}`;
  const near = answer.meals.filter((meal) => meal.role !== 'away');
  const sum = (meals: readonly DayAnswer['meals'][number][]) =>
    meals.reduce((grams, meal) => grams + meal.target.carbohydrateG, 0);
  const all = sum(answer.meals);
  if (near.length === 0 || near.length === answer.meals.length || all <= 0) {
    return [`No meal starts from ${day.rules.mealToTrainingMinutes} minutes before ${window} until it ends.`];
  }
  const share = Math.round((100 * sum(near)) / all);
  const before = near.some((meal) => meal.role === 'before-training');
  const cap = before
    ? ` Fat before it is held to ${day.rules.fatBeforeTrainingMaxG} g where other meals can carry it.`
    : '';
  return [
    `Meals around ${window} are meant to carry ${share} % of the carbohydrate left; fat leans to the others.${cap}`,
  ];
}

/** A pinned meal stands where it is pinned; what it runs against is said. */
function pinnedSentences(day: DaySituation): string[] {
  const { training, rules } = day;
  return day.pinned.flatMap(({ at }) => {
    const said = `The meal pinned at ${formatClock(at)}`;
    const nearest = Math.min(
      ...day.eatenAt.map((other) => Math.abs(at - other)),
      ...day.pinned.filter((pin) => pin.at !== at).map((pin) => Math.abs(at - pin.at)),
    );
    return [
      ...(training && at > training.start - rules.mealToTrainingMinutes && at < training.end
        ? [`${said} lies in training or just before it, and stays.`]
        : []),
      ...(at > day.sleep - rules.lastMealToSleepMinutes
        ? [`${said} lies less than ${rules.lastMealToSleepMinutes} minutes before sleep, and stays.`]
        : []),
      ...(nearest < rules.minGapMinutes
        ? [
            `${said} lies ${nearest} minutes beside another meal, less than the ${rules.minGapMinutes} wanted.`,
          ]
        : []),
    ];
  });
}

/** How far off the day may be because part of what is eaten is a guess; guesses err independently of each other. */
function guessSentences(day: DaySituation): string[] {
  const guesses = day.request.eaten.flatMap((meal) =>
    meal.items.flatMap((item) => ('nutrients' in item && item.spreadPercent > 0 ? [item] : [])),
  );
  if (guesses.length === 0) return [];
  const off = (key: 'energyKcal' | 'proteinG') =>
    roundTo(Math.hypot(...guesses.map((item) => (item.nutrients[key] * item.spreadPercent) / 100)), 0);
  return [
    `Part of what is eaten is a guess: the day may be ${off('energyKcal')} kcal and ${off('proteinG')} g of protein off either way.`,
  ];
}

const MACROS = [
  ['proteinG', 'protein'],
  ['carbohydrateG', 'carbohydrate'],
  ['fatG', 'fat'],
] as const;

/** What the day ends short or over by, and the reason where there is one. */
function missingSentences(day: DaySituation, schedule: Schedule, answer: Answered): string[] {
  const off = MACROS.filter(([key]) => Math.abs(answer.deviation[key]) > ON_TARGET_G);
  if (off.length === 0)
    return answer.status === 'infeasible'
      ? []
      : [`Protein, carbohydrate and fat land within ${ON_TARGET_G} g of the day's targets.`];
  return off.map(([key, name]) => {
    const grams = roundTo(Math.abs(answer.deviation[key]), 0);
    if (answer.deviation[key] > 0) return `${grams} g of ${name} over: ${overReason(day, key)}.`;
    return `${grams} g of ${name} short: ${shortReason(day, schedule, answer, key)}.`;
  });
}

function overReason(day: DaySituation, key: (typeof MACROS)[number][0]): string {
  const eaten = day.request.eaten.flatMap((meal) => meal.items);
  const eatenG = eaten.reduce((sum, item) => sum + eatenGrams(day, item, key), 0);
  return eatenG > day.request.targets[key]
    ? 'that much is eaten already'
    : 'less of it would miss other targets by more';
}

function eatenGrams(
  day: DaySituation,
  item: DaySituation['request']['eaten'][number]['items'][number],
  key: (typeof MACROS)[number][0],
): number {
  if ('nutrients' in item) return item.nutrients[key];
  const food = day.request.foods.find((one) => one.id === item.food);
  return ((food?.per100g[key] ?? 0) * item.grams) / 100;
}

function shortReason(
  day: DaySituation,
  schedule: Schedule,
  answer: Answered,
  key: (typeof MACROS)[number][0],
): string {
  if (answer.meals.length === 0) return noPlanReason(day, schedule);
  const carriers = day.request.foods.filter((food) => !food.banned && food.per100g[key] >= 5);
  if (carriers.length === 0) return 'nothing in stock holds much of it';
  const left = carriers.filter((food) => {
    const planned = answer.meals.flatMap((meal) => meal.items).filter((item) => item.food === food.id);
    const grams = planned.reduce((sum, item) => sum + item.grams, 0);
    const there = food.portionsG
      ? food.portionsG.reduce((a, b) => a + b, 0)
      : (food.availableG ?? Number.POSITIVE_INFINITY);
    return grams + food.minG <= there;
  });
  return left.length === 0
    ? 'the stock that holds it is used up'
    : 'more of it would miss other targets, or fill the plates, by more';
}

function noPlanReason(day: DaySituation, { allowed, fits }: Schedule): string {
  if (allowed === 0) return `the ${day.rules.meals.max} meals allowed are eaten`;
  if (fits === 0) return 'no time is left for a meal';
  const foods = day.request.foods.filter((food) => !food.banned);
  return foods.length === 0 ? 'nothing is in stock for a plan' : 'nothing in stock can be served';
}

function unusableSentence(posed: PosedPlates): string[] {
  if (posed.unusable.length === 0) return [];
  const shown = posed.unusable.slice(0, MOST_LEFT_OUT);
  const more = posed.unusable.length - shown.length;
  return [`Left out: ${shown.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`];
}

/** An unknown fibre or sodium counts as 0 in the cost; where a limit asks for it, that is said. */
function unknownSentences(day: DaySituation): string[] {
  const { targets, foods } = day.request;
  const silent = (key: 'fibreG' | 'sodiumMg') =>
    foods.filter((food) => food.per100g[key] === undefined).map((food) => food.id);
  const say = (ids: readonly string[], word: string) =>
    ids.length === 0
      ? []
      : [
          `${word} is not known of ${ids.slice(0, MOST_LEFT_OUT).join(', ')}${ids.length > MOST_LEFT_OUT ? ' and others' : ''}; it counts as none.`,
        ];
  return [
    ...(targets.fibreG ? say(silent('fibreG'), 'Fibre') : []),
    ...(targets.sodiumMg ? say(silent('sodiumMg'), 'Sodium') : []),
  ];
}

function proofSentence({ status, cost, gap, meals }: Answered): string {
  if (status === 'infeasible') return 'No plan is possible for what is left of the day.';
  if (meals.length === 0) return 'Nothing is left to plan.';
  const kcal = `The plan misses its targets by ${roundTo(cost, 1)} kcal of mistake`;
  return status === 'optimal'
    ? `${kcal}; no plan for these meals can do better.`
    : `${kcal}; no plan for these meals can be more than ${roundTo(100 * gap, 2)} % better.`;
}
