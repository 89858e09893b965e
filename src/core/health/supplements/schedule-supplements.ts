import { readShape } from '#core/problems/from-issues.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { caffeineLimits } from '#core/tables/caffeine-limits.ts';
import { citation } from '#core/tables/sources.ts';
import { formatClock, parseClock } from '#core/units/clock.ts';
import { roundTo } from '#core/units/rounding.ts';
import { dayFrame, fixedPoints } from './frame-day.ts';
import { placeDoses, type FixedPoint, type OpenDose, type Placement } from './place-doses.ts';
import { keysIn, type Product } from './read-label.ts';
import { caffeineMgOf, refuseDose } from './refuse-dose.ts';
import { dosingCautions } from './dosing-cautions.ts';
import { scheduleRequest, type ScheduleAnswer, type ScheduleRequest } from './schedule-request.ts';
import { sayGap, tooClose } from './separation.ts';
import { tieTimes, type DayFrame } from './tie-times.ts';

type Dose = ScheduleRequest['doses'][number];
type Refusal = ScheduleAnswer['refused'][number];

/**
 * The day's doses beside what they are tied to (HLT-30 to HLT-36): moved with the meals, kept apart from what they must
 * not meet, refused where no dose may be planned, and said aloud where no time keeps every gap. Call it again with the
 * new meals whenever the day is re-planned.
 */
export function scheduleSupplements(input: unknown): Outcome<ScheduleAnswer> {
  const shaped = readShape(scheduleRequest, input, 'health');
  if (!shaped.ok) return shaped;
  const request = shaped.value;
  const products = new Map(request.products.map((product) => [product.supplement, product]));
  const named = [
    ...request.doses.map((dose, index) => [`doses.${index}`, dose] as const),
    ...(request.taken ?? []).map((dose, index) => [`taken.${index}`, dose] as const),
  ];
  for (const [path, { supplement }] of named) {
    if (products.has(supplement)) continue;
    return refused(
      'health/unknown-supplement',
      `${path}.supplement`,
      `No product "${supplement}" is described.`,
      'Add it to "products", or correct its name.',
    );
  }
  return answered(schedule(request, products));
}

interface Sorted {
  readonly open: { dose: Dose; product: Product; open: OpenDose }[];
  readonly done: string[];
  readonly missed: ScheduleAnswer['missed'];
  readonly notToday: ScheduleAnswer['notToday'];
  readonly refused: Refusal[];
}

function schedule(request: ScheduleRequest, products: ReadonlyMap<string, Product>): ScheduleAnswer {
  const day = dayFrame(request);
  const fixed = fixedPoints(request, products);
  const sorted = sortDoses(request, products, day, fixed);
  const placements = placeDoses(
    sorted.open.map(({ open }) => open),
    fixed,
  );
  const items = placements.flatMap((placement) => itemOf(placement, sorted));
  items.sort((a, b) => (parseClock(a.at) ?? 0) - (parseClock(b.at) ?? 0));
  const impossible = placements.flatMap(impossibleOf);
  const takenMg = fixed.reduce((sum, { caffeineMg }) => sum + caffeineMg, 0);
  const plannedMg = placements.reduce(
    (sum, placement) => sum + ('time' in placement ? placement.dose.caffeineMg : 0),
    0,
  );
  return {
    items,
    done: sorted.done,
    missed: sorted.missed,
    notToday: sorted.notToday,
    refused: sorted.refused,
    impossible,
    conflicts: fixedConflicts(fixed),
    caffeine: {
      plannedMg: roundTo(plannedMg, 1),
      takenMg: roundTo(takenMg, 1),
      limitMg: caffeineLimits.perDayMg,
    },
    cautions: dosingCautions(request, products),
    why: whyOf(items, sorted, impossible, plannedMg, takenMg),
  };
}

/** Takes out what is done, refused, not of today or past; what is left looks for a time. */
function sortDoses(
  request: ScheduleRequest,
  products: ReadonlyMap<string, Product>,
  day: DayFrame,
  fixed: readonly FixedPoint[],
): Sorted {
  const sorted: Sorted = { open: [], done: [], missed: [], notToday: [], refused: [] };
  const done = new Set([...(request.taken ?? []).map(({ regimen }) => regimen), ...(request.skipped ?? [])]);
  let caffeineMg = fixed.reduce((sum, point) => sum + point.caffeineMg, 0);
  for (const dose of request.doses) {
    const product = products.get(dose.supplement);
    if (!product) continue;
    const { regimen } = dose;
    if (done.has(regimen)) {
      sorted.done.push(regimen);
      continue;
    }
    const refusal = refuseDose(product, dose.units);
    if (refusal) {
      sorted.refused.push({ regimen, words: refusal.words, source: citation(refusal.source) });
      continue;
    }
    const { times, none } = tieTimes(dose.tie, day);
    if (none !== undefined) sorted.notToday.push({ regimen, words: `${product.name} ${none}.` });
    else if (times.length === 0)
      sorted.missed.push({ regimen, words: `${product.name}, ${dose.tie.to}: its moment has passed.` });
    else {
      const own = caffeineMgOf(product, dose.units);
      const open: OpenDose = {
        regimen,
        name: product.name,
        classes: keysIn(product),
        caffeineMg: own,
        times,
      };
      const limited = keepCaffeine(open, product, day, caffeineMg);
      if ('refusal' in limited) sorted.refused.push(limited.refusal);
      else {
        caffeineMg += own;
        sorted.open.push({ dose, product, open: limited.open });
      }
    }
  }
  return sorted;
}

/** Caffeine over the day's limit, or so near bed that it costs sleep, is not planned. */
function keepCaffeine(
  open: OpenDose,
  product: Product,
  day: DayFrame,
  soFarMg: number,
): { open: OpenDose } | { refusal: Refusal } {
  if (open.caffeineMg === 0) return { open };
  const { perDayMg, nearBedMg, nearBedMinutes, doseSource, nearBedSource } = caffeineLimits;
  const { regimen } = open;
  if (soFarMg + open.caffeineMg > perDayMg) {
    const words = `${product.name}: with ${Math.round(open.caffeineMg)} mg the day would reach ${Math.round(soFarMg + open.caffeineMg)} mg of caffeine, above ${perDayMg} mg from all sources.`;
    return { refusal: { regimen, words, source: citation(doseSource) } };
  }
  if (open.caffeineMg < nearBedMg) return { open };
  const times = open.times.filter(({ minutes }) => day.sleep - minutes >= nearBedMinutes);
  if (times.length > 0) return { open: { ...open, times } };
  const words = `${product.name}: ${Math.round(open.caffeineMg)} mg of caffeine less than ${sayGap(nearBedMinutes)} before sleep at ${formatClock(day.sleep)} costs sleep.`;
  return { refusal: { regimen, words, source: citation(nearBedSource) } };
}

function itemOf(placement: Placement, sorted: Sorted): ScheduleAnswer['items'] {
  if (!('time' in placement)) return [];
  const found = sorted.open.find(({ open }) => open === placement.dose);
  if (!found) return [];
  const { dose, product } = found;
  const { minutes, slot, words } = placement.time;
  return [
    {
      regimen: dose.regimen,
      supplement: product.supplement,
      name: product.name,
      units: dose.units,
      unit: product.unit,
      at: formatClock(minutes),
      ...(slot === undefined ? {} : { slot }),
      words,
    },
  ];
}

function impossibleOf(placement: Placement): ScheduleAnswer['impossible'] {
  if (!('obstacle' in placement)) return [];
  const { dose, obstacle } = placement;
  if (obstacle.kind === 'caffeine') {
    const { perDoseMg, oneDoseWithinMinutes, doseSource } = caffeineLimits;
    return [
      {
        regimen: dose.regimen,
        against: 'other caffeine',
        gapMinutes: oneDoseWithinMinutes,
        words: `${dose.name} would make ${Math.round(obstacle.sumMg)} mg of caffeine within ${sayGap(oneDoseWithinMinutes)}, above ${perDoseMg} mg; no other time of today fits.`,
        source: citation(doseSource),
      },
    ];
  }
  const { rule, needed } = obstacle.close;
  return [
    {
      regimen: dose.regimen,
      against: obstacle.against,
      gapMinutes: needed,
      words: `${dose.name} needs ${sayGap(needed)} from ${obstacle.against} (${rule.words}); no time of today keeps it. Leave one out today, or ask the prescriber or a pharmacist.`,
      source: citation(rule.source),
    },
  ];
}

/** Times that nobody here may move stand too close: it is said, not mended. */
function fixedConflicts(fixed: readonly FixedPoint[]): ScheduleAnswer['conflicts'] {
  return fixed.flatMap((a, index) =>
    fixed.slice(index + 1).flatMap((b) => {
      const close = tooClose(a, b);
      if (!close) return [];
      const words = `${a.name} at ${formatClock(a.minutes)} and ${b.name} at ${formatClock(b.minutes)} stand ${close.found} min apart, ${sayGap(close.needed)} are advised: ${close.rule.words}.`;
      return [{ words, source: citation(close.rule.source) }];
    }),
  );
}

function whyOf(
  items: ScheduleAnswer['items'],
  sorted: Sorted,
  impossible: ScheduleAnswer['impossible'],
  plannedMg: number,
  takenMg: number,
): string[] {
  const moved = items.filter(({ words }) => words.includes('moved'));
  return [
    `${items.length} doses planned, ${sorted.done.length} taken or skipped, ${sorted.missed.length} missed, ${sorted.refused.length} refused, ${impossible.length} without a time that keeps every gap.`,
    ...moved.map(({ name, at, words }) => `${name} at ${at}: ${words}.`),
    `Caffeine: ${Math.round(takenMg)} mg so far and ${Math.round(plannedMg)} mg planned of ${caffeineLimits.perDayMg} mg a day.`,
  ];
}
