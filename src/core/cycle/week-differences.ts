import type { DataOf } from '../journal/kinds/registry.ts';
import type { WeekPlan } from '../week/week-plan.ts';
import { capital } from '../units/capital.ts';
import { dateWords } from '../words/dates.ts';

type Standing = Pick<DataOf<'week-adopted'>, 'days' | 'pans'>;
type Day = Standing['days'][number];
type Solved = Pick<WeekPlan, 'days' | 'pans'>;
type NameOf = (id: string) => string;
type Foods = Pick<Solved['days'][number], 'foods'>;

/** Less is the scale's own. */
const SAME_G = 5;

/** What changes on one day, or at the stove. */
export interface WeekDifference {
  readonly about: string;
  readonly sentences: readonly string[];
}

/** What a week solved again would change of the one that stands, for the days to come (WEK-10). Empty: nothing. */
export function weekDifferences(
  standing: Standing,
  solved: Solved,
  today: string,
  nameOf: NameOf,
): readonly WeekDifference[] {
  const later = <Dated extends { readonly date: string }>(all: readonly Dated[]) =>
    all.filter(({ date }) => date > today);
  const pans = panDifferences(later(standing.pans), later(solved.pans), nameOf);
  return [
    ...(pans.length === 0 ? [] : [{ about: 'At the stove', sentences: pans }]),
    ...later(solved.days).flatMap((day) => {
      const before = standing.days.find(({ date }) => date === day.date);
      const sentences = before ? dayDifference(before, day, nameOf) : newDay(day, nameOf);
      return sentences.length === 0 ? [] : [{ about: dateWords(day.date), sentences }];
    }),
    ...later(standing.days).flatMap(({ date }) =>
      solved.days.some((day) => day.date === date)
        ? []
        : [{ about: dateWords(date), sentences: ['No longer planned.'] }],
    ),
  ];
}

function newDay(day: Solved['days'][number], nameOf: NameOf): string[] {
  const dishes = dishesOf(day, nameOf);
  return [`Planned as well${dishes === '' ? '' : `: ${dishes}`}.`];
}

function dayDifference(before: Day, after: Solved['days'][number], nameOf: NameOf): string[] {
  const [had, has] = [dishesOf(before, nameOf), dishesOf(after, nameOf)];
  const foods = foodDifferences(before, after, nameOf);
  return [
    ...(had === has
      ? []
      : [`${capital(has === '' ? 'no dish' : has)}; what stands: ${had === '' ? 'no dish' : had}.`]),
    ...(foods.length === 0 ? [] : [`Beside it ${foods.join('; ')}.`]),
  ];
}

function dishesOf({ dishes }: Pick<Solved['days'][number], 'dishes'>, nameOf: NameOf): string {
  return dishes
    .map((dish) => {
      const from = dish.from === 'ready' ? dish.batch : dish.recipe;
      const thawed = dish.from === 'pan' && dish.frozen ? ', from the freezer' : '';
      return `${portions(dish.portions)} ${nameOf(from)}${thawed}`;
    })
    .sort()
    .join(' and ');
}

function foodDifferences(before: Foods, after: Foods, nameOf: NameOf): string[] {
  const gramsIn = (day: Foods, food: string) => day.foods.find((one) => one.food === food)?.grams ?? 0;
  const foods = new Set([...before.foods, ...after.foods].map(({ food }) => food));
  return [...foods].flatMap((food) => {
    const [had, has] = [gramsIn(before, food), gramsIn(after, food)];
    if (Math.abs(has - had) <= SAME_G) return [];
    if (has === 0) return [`no ${nameOf(food)}`];
    return [`${Math.round(has)} g ${nameOf(food)}${had === 0 ? '' : ` (was ${Math.round(had)} g)`}`];
  });
}

function panDifferences(before: Standing['pans'], after: Solved['pans'], nameOf: NameOf): string[] {
  const same = (one: Solved['pans'][number], other: Solved['pans'][number]) =>
    one.recipe === other.recipe && one.date === other.date;
  const gone = before.filter((pan) => !after.some((other) => same(pan, other)));
  const cooked = after.flatMap((pan) => {
    const had = before.find((other) => same(pan, other));
    if (had?.portions === pan.portions) return [];
    const at = gone.findIndex(({ recipe }) => recipe === pan.recipe);
    const [moved] = had || at === -1 ? [] : gone.splice(at, 1);
    const was = had ? `, was ${had.portions}` : moved ? `, not on ${dateWords(moved.date)}` : '';
    return [`${nameOf(pan.recipe)} on ${dateWords(pan.date)}, ${portions(pan.portions)}${was}.`];
  });
  return [...cooked, ...gone.map((pan) => `No ${nameOf(pan.recipe)} on ${dateWords(pan.date)}.`)];
}

function portions(count: number): string {
  return count === 1 ? '1 portion' : `${count} portions`;
}
