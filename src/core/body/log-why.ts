import { roundTo } from '#core/units/rounding.ts';
import { count } from './why-words.ts';
import type { IntakeBasis } from './lived-days.ts';
import type { DoubtfulWeight } from './suspect-units.ts';
import type { WhyInput } from './estimate-why.ts';

/** Readings named one by one before the rest are only counted. */
const NAMED = 3;
/** A reading below this chance of being an ordinary one is named. */
const STRAY_CHANCE = 0.2;
/** Body fat below which nobody is known to live, percent; common practice, no source. */
const ESSENTIAL_PERCENT = { male: 4, female: 10 } as const;
/** Energy of a logged day may differ from that of its protein, carbohydrate and fat by this share. */
const ENERGY_TOLERANCE = 0.25;

/** What the log held and how its holes were filled. */
export function logWhy({ request, answer, estimate }: WhyInput): string[] {
  const past = estimate.lived.slice(0, answer.days.length);
  const weighed = past.filter(({ weightKg }) => weightKg !== undefined).length;
  const of = (basis: IntakeBasis) => past.filter((day) => day.basis === basis);
  const methods = estimate.methods.map(({ method }) => method.name).join(', ');
  const readings = past.filter(({ bodyFat }) => bodyFat).length;
  const held = `The log holds ${count(weighed, 'weigh-in')}, ${count(of('logged').length, 'logged day')} and ${count(readings, 'body-fat reading')}${methods ? ` (${methods})` : ''} over ${count(past.length, 'day')}.`;
  return [
    held,
    ...unloggedWhy(of('unlogged').length, of('nothing-before').length),
    ...namedWhy(
      of('zero').map(({ date }) => date),
      (dates) =>
        `${dates} is logged as 0 kcal: a fast, or a log left empty? It is taken as unclear, anything from nothing to a usual day. Say which it was.`,
    ),
    ...namedWhy(
      of('doubtful').map(({ date }) => date),
      (dates) => `${dates} is logged far below the usual: taken as midway, with a spread that covers both.`,
    ),
    ...mismatchWhy(request.days),
    ...sodiumWhy(request.days),
  ];
}

function unloggedWhy(unlogged: number, nothingBefore: number): string[] {
  const sentences: string[] = [];
  if (unlogged > 0)
    sentences.push(
      `Intake of ${count(unlogged, 'day')} was not logged; each is taken as the average of the logged days before it, with a wide spread.`,
    );
  if (nothingBefore > 0)
    sentences.push(
      `On ${count(nothingBefore, 'day')} nothing had been logged yet; the body is taken to have eaten about what it spent.`,
    );
  return sentences;
}

function mismatchWhy(days: WhyInput['request']['days']): string[] {
  const off = days.filter(({ intake }) => {
    if (!intake || intake.energyKcal === 0) return false;
    const sum = 4 * intake.proteinG + 4 * intake.carbohydrateG + 9 * intake.fatG;
    return sum > 0 && Math.abs(intake.energyKcal / sum - 1) > ENERGY_TOLERANCE;
  });
  if (off.length === 0) return [];
  return [
    `On ${count(off.length, 'day')} the energy differs from 4/4/9 kcal per gram of protein, carbohydrate and fat by more than ${100 * ENERGY_TOLERANCE} %: check units and alcohol.`,
  ];
}

function sodiumWhy(days: WhyInput['request']['days']): string[] {
  const logged = days.filter(({ intake }) => intake);
  if (logged.length === 0 || logged.some(({ intake }) => intake?.sodiumMg !== undefined)) return [];
  return ['Sodium was never logged, so water that follows salt stays in the spread.'];
}

/** Readings that count for little, and numbers that cannot be what they say. */
export function doubtWhy({ request, answer, estimate }: WhyInput): string[] {
  const { doubtful } = estimate;
  const weights = new Map(request.days.map(({ date, weightKg }) => [date, weightKg]));
  const strays = estimate.past.filter(({ ordinary }) => ordinary !== undefined && ordinary < STRAY_CHANCE);
  const last = answer.days.at(-1)?.date ?? '';
  const low = request.days.filter(
    ({ date, bodyFat }) =>
      bodyFat && date <= last && bodyFat.percent < ESSENTIAL_PERCENT[request.athlete.sex],
  );
  return [
    ...namedWhy(
      strays.map(({ date }) => `${weights.get(date) ?? 0} kg on ${date}`),
      (readings) => `${readings}: off the course of the other readings, so it counts for little.`,
    ),
    ...namedWhy(
      doubtful.filter(({ reason }) => reason === 'pounds').map(poundsWords),
      (readings) => `${readings}: typed in pounds? Say so or correct it.`,
    ),
    ...namedWhy(
      doubtful
        .filter(({ reason }) => reason === 'slip')
        .map(({ weightKg, date }) => `${weightKg} kg on ${date}`),
      (readings) => `${readings}: contradicted by the readings around it, and left out.`,
    ),
    ...namedWhy(
      low.map(({ bodyFat, date }) => `${bodyFat?.percent ?? 0} % on ${date}`),
      (readings) =>
        `${readings}: below ${ESSENTIAL_PERCENT[request.athlete.sex]} % body fat, less than a body keeps in health; it is read with the error of its method. If it is true, see a doctor.`,
    ),
  ];
}

function poundsWords({ weightKg, date, asPoundsKg, contradicted }: DoubtfulWeight): string {
  const used = contradicted ? 'left out' : 'used as typed';
  return `${weightKg} kg on ${date} would be ${roundTo(asPoundsKg, 1)} kg if it were pounds (${used})`;
}

function namedWhy(items: readonly string[], sentence: (named: string) => string): string[] {
  if (items.length === 0) return [];
  const more = items.length - NAMED;
  const named = items.slice(0, NAMED).join(', ');
  return [sentence(more > 0 ? `${named} and ${more} more` : named)];
}
