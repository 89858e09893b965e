import { regimensForDraw } from '#core/cycle/draw-now.ts';
import { isDue } from '#core/health/supplements/regimens.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { randomStream, type RandomStream } from '#core/random/random-stream.ts';
import { addDays, isoWeekday } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import { writeDrawPlan, writePanel } from './blood-panels.ts';
import type { Scribe } from './scribe.ts';
import { trainingWeekdays } from './season.ts';
import { story } from './story.ts';
import { regimens, writeShelf, writeSupplementCount } from './supplement-shelf.ts';

const LAST = story.weeks * 7;
/** Doses are logged one by one in the last three weeks; before, she did not write them down. */
const DOSE_DAYS = 21;
/** A Monday after a day of rest; a Friday, the morning after the legs. */
const PANEL_DAYS = [11, 92] as const;

/** When each dose was swallowed on an ordinary day. */
const CLOCKS: Readonly<Record<string, string>> = {
  'iron-waking': '06:02',
  'multi-first': '07:45',
  'd3-fat': '12:35',
  'oil-fat': '12:36',
  'creatine-carb': '12:38',
  'caffeine-training': '13:45',
  'magnesium-sleep': '21:45',
};

/** What Health gets of each day of the story; call it once a day, in order, after the day's food. */
export function healthDays(seed: number): (scribe: Scribe, number: number) => void {
  const chance = randomStream(seed, 'demo health');
  return (scribe, number) => {
    const day = addDays(story.begins, number);
    if (number === 0) writeShelf(scribe, day);
    if (chance.uniform() < 0.72) writeFeeling(scribe, day, number / LAST, chance);
    if (number >= LAST - DOSE_DAYS) writeDoses(scribe, day, chance);
    if (number === LAST - DOSE_DAYS - 1) writeSupplementCount(scribe, day);
    if (number === PANEL_DAYS[0]) writePanel(scribe, day, 0);
    if (number === PANEL_DAYS[1]) writePanel(scribe, day, 1);
    if (number === LAST - 1) writeDraw(scribe, day);
  };
}

/** A short note in the evening: the heart slows, sleep shortens, cold and hunger grow with the weeks. */
function writeFeeling(scribe: Scribe, day: string, share: number, chance: RandomStream): void {
  const score = (from: number, to: number) =>
    Math.min(5, Math.max(1, Math.round(from + (to - from) * share + 0.5 * chance.normal())));
  scribe.write(day, '21:40', 'feeling-noted', {
    restingHeartRateBpm: Math.round(59 - 9 * share + 1.5 * chance.normal()),
    sleepHours: roundTo(7.6 - 0.7 * share + 0.35 * chance.normal(), 1),
    sleepQuality: score(4.2, 3.4),
    mood: score(4.2, 3.8),
    libido: score(4, 3),
    hunger: score(2, 3.8),
    cold: score(1.5, 3.2),
  });
}

function writeDoses(scribe: Scribe, day: string, chance: RandomStream): void {
  const trains = trainingWeekdays.some((weekday) => weekday === isoWeekday(day));
  for (const regimen of regimens) {
    if (!isDue({ ...regimen, from: story.begins }, day, trains)) continue;
    const clock = CLOCKS[regimen.regimen] ?? '12:30';
    const { supplement, units } = regimen;
    if (chance.uniform() < 0.04)
      scribe.write(day, clock, 'supplement-skipped', {
        supplement,
        regimen: regimen.regimen,
        reason: 'Forgotten',
      });
    else scribe.write(day, clock, 'supplement-taken', { supplement, units, regimen: regimen.regimen });
  }
}

/** The evening before the story's today: the draw is planned, and what must pause for it is paused. */
function writeDraw(scribe: Scribe, day: string): void {
  const date = addDays(story.today, 7);
  writeDrawPlan(scribe, day, date);
  const ledger = createLedger(scribe.entries);
  const draw = ledger.latest('draw-planned');
  if (!draw) throw new RangeError('the story has no draw');
  for (const regimen of regimensForDraw(ledger, draw.data, day, undefined))
    scribe.write(day, '20:41', 'regimen-set', regimen);
}
