import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { addDays, daysBetween } from '#core/units/civil-date.ts';
import { formatClock, parseClock } from '#core/units/clock.ts';
import type { ClockMinutes } from '#core/units/quantities.ts';
import type { SourceKey } from '#core/tables/sources.ts';
import { analyteByName } from '../panel/find-analyte.ts';
import { morningItems } from './draw-morning.ts';
import type { Concerns, DrawItem, DrawPlan, DrawPlanRequest, PlannedDraw } from './draw-plan.ts';
import { pausesBefore } from './pauses-before.ts';

const REST_DAYS = 7;
const FAST_HOURS = 12;
const HORMONES_BEFORE: ClockMinutes = 10 * 60;

/** What muscle work moves for a week, what it moves for days, what food moves, what the clock moves. */
const ofTraining = ['ast', 'alt', 'ldh', 'ck'];
const ofInflammation = ['ferritin', 'crp', 'hscrp', 'iron', 'tsat'];
const ofFood = ['glucose', 'insulin', 'triglycerides', 'testosterone'];
const ofClock = ['testosterone', 'freeTestosterone', 'cortisol'];

/**
 * The days before a draw as lines of the run sheet (HLT-50 to HLT-52): no hard legs, what to pause and when, the fast,
 * water as usual, the morning. It stops no prescribed medicine and cuts no water.
 */
export function planDraw(request: DrawPlanRequest): Outcome<DrawPlan> {
  const { today, draw } = request;
  if (draw.date < today) {
    return refused(
      'health/draw-past',
      'draw.date',
      `The draw of ${draw.date} lies before ${today}.`,
      'Give the date of a draw to come, or enter its results as a panel.',
    );
  }
  const measured = new Set(draw.analytes.map((name) => analyteByName(name)?.analyte.key ?? name));
  const concerns = (keys: readonly string[]) => measured.size === 0 || keys.some((key) => measured.has(key));
  const { items: pauseItems, pauses } = pausesBefore(request, concerns);
  const all = [
    ...trainingItems(draw, concerns),
    ...pauseItems,
    ...foodItems(draw, concerns),
    ...morningItems(request, concerns),
  ];
  const past = all.filter(({ day }) => day < today);
  const items = all.filter(({ day }) => day >= today).sort(inOrder);
  return answered({
    items,
    pauses,
    cautions: [...lateCautions(past, today), ...clockCautions(request, concerns)],
    why: whyOf(request, measured.size, items.length, pauses.length),
  });
}

function trainingItems(draw: PlannedDraw, concerns: Concerns): DrawItem[] {
  const items: DrawItem[] = [];
  if (concerns(ofTraining)) {
    items.push({
      day: addDays(draw.date, -REST_DAYS),
      kind: 'training',
      words: `From today to the draw on ${draw.date}: no hard leg session and nothing unaccustomed; AST, ALT, LDH and CK stay up for a week and more after lifting.`,
      source: 'pettersson-2008',
    });
  }
  if (concerns([...ofTraining, ...ofInflammation])) {
    items.push({
      day: addDays(draw.date, -3),
      kind: 'training',
      words:
        'Easy training only until the draw, none of it near failure. If it was hard after all, the hours since go with the panel.',
      source: 'draw-practice',
    });
  }
  items.push({
    day: addDays(draw.date, -1),
    kind: 'training',
    words: 'No training but an easy walk, no alcohol.',
    source: 'draw-practice',
  });
  return items;
}

function foodItems(draw: PlannedDraw, concerns: Concerns): DrawItem[] {
  const at = parseClock(draw.at) ?? 0;
  const eve = addDays(draw.date, -1);
  const items: DrawItem[] = [];
  if (concerns(['creatinine', 'egfrCr2021'])) {
    items.push({
      day: eve,
      kind: 'food',
      words: 'No large portion of cooked meat this evening: it raises creatinine.',
      source: 'draw-practice',
    });
  }
  if (draw.fasting || concerns(ofFood)) {
    const lastFood = at + 1440 - FAST_HOURS * 60;
    const words = draw.fasting
      ? `Last food by ${formatClock(lastFood % 1440)}: ${FAST_HOURS} h before the draw, water is free.`
      : `If glucose, insulin, triglycerides or testosterone are measured: last food by ${formatClock(lastFood % 1440)}, water is free.`;
    items.push({
      day: lastFood >= 1440 ? draw.date : eve,
      at: formatClock(lastFood % 1440),
      kind: 'food',
      words,
      source: 'simundic-2014',
    });
  }
  items.push({
    day: eve,
    kind: 'drink',
    words: 'Drink as on every day, no less and no more: a dry body thickens the blood.',
    source: 'draw-practice',
  });
  return items;
}

function lateCautions(past: readonly DrawItem[], today: string): DrawPlan['cautions'] {
  return past
    .filter(({ kind }) => kind === 'training' || kind === 'pause')
    .map(({ day, words, source }) => ({
      words: `This should have begun on ${day}, ${daysBetween(day, today)} days ago: ${words} Begin today and tell the laboratory.`,
      source,
    }));
}

function clockCautions({ draw, previous }: DrawPlanRequest, concerns: Concerns): DrawPlan['cautions'] {
  const cautions: { words: string; source: SourceKey }[] = [];
  if (concerns(ofClock) && (parseClock(draw.at) ?? 0) > HORMONES_BEFORE) {
    cautions.push({
      words: `At ${draw.at} testosterone and cortisol have fallen: take a time before 10:00.`,
      source: 'brambilla-2009',
    });
  }
  if (!previous) return cautions;
  if (
    previous.laboratory !== undefined &&
    draw.laboratory !== undefined &&
    previous.laboratory !== draw.laboratory
  ) {
    cautions.push({
      words: `The draw of ${previous.date} went to ${previous.laboratory}: another laboratory reads differently, so the trend breaks.`,
      source: 'draw-practice',
    });
  }
  const before = previous.time === undefined ? undefined : parseClock(previous.time);
  if (before !== undefined && Math.abs(before - (parseClock(draw.at) ?? 0)) > 120) {
    cautions.push({
      words: `The draw of ${previous.date} was at ${previous.time}: the same hour keeps the trend honest.`,
      source: 'draw-practice',
    });
  }
  return cautions;
}

function inOrder(a: DrawItem, b: DrawItem): number {
  const moment = ({ day, at }: DrawItem) => `${day} ${at ?? '00:00'}`;
  return moment(a) < moment(b) ? -1 : moment(a) > moment(b) ? 1 : 0;
}

function whyOf({ draw, today }: DrawPlanRequest, measured: number, items: number, pauses: number): string[] {
  return [
    `${daysBetween(today, draw.date)} days to the draw on ${draw.date} at ${draw.at}; ${items} lines, ${pauses} pauses.`,
    measured === 0
      ? 'What will be measured is not known, so the plan guards everything.'
      : `Planned for the ${measured} values asked for.`,
    'No prescribed medicine is stopped and no water is cut.',
  ];
}
