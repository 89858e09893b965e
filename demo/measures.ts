import { siri } from '#core/science/siri.ts';
import { skinfoldSevenSites } from '#core/science/skinfold-seven-sites.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { BodyDay } from './body-path.ts';
import type { Scribe } from './scribe.ts';
import { story } from './story.ts';
import { CYCLE_DAYS } from './true-body.ts';

/** Each site's share of the sum of her seven folds. */
const SHARES = {
  chest: 0.09,
  midaxillary: 0.1,
  triceps: 0.17,
  subscapular: 0.13,
  abdomen: 0.15,
  suprailiac: 0.12,
  thigh: 0.24,
} as const;
/** Her folds read a little low, and her scan a little high, as methods do for one person. */
const BIAS = { folds: -0.7, scan: 1.1 } as const;
const SCAN_DAY = 3;

/** Tape every week, folds every second, one scan at the start, and the onset of menses. */
export function writeMeasures(scribe: Scribe, day: string, number: number, body: BodyDay): void {
  if (number % CYCLE_DAYS === 0) scribe.write(day, '07:58', 'cycle-noted', { event: 'menses began' });
  if (number % 7 === 0)
    scribe.write(day, '08:00', 'girths-measured', {
      sites: {
        waist: roundTo(body.waistCm, 1),
        hip: roundTo(body.waistCm + 24, 1),
        'thigh right': roundTo(0.45 * body.waistCm + 22, 1),
      },
    });
  if (number % 14 === 0)
    scribe.write(day, '08:05', 'folds-measured', {
      sites: foldsOf(body.fatPercent + BIAS.folds),
      equation: 'jackson-pollock-7',
    });
  if (number === SCAN_DAY)
    scribe.write(day, '10:30', 'body-fat-measured', {
      percent: roundTo(body.fatPercent + BIAS.scan, 1),
      method: 'dxa',
    });
}

/** Folds, to half a millimetre, that make up a body fat by the equation she uses. */
function foldsOf(percent: number): Record<keyof typeof SHARES, number[]> {
  const age = Number(story.begins.slice(0, 4)) - story.birthYear;
  let [low, high] = [20, 300];
  while (high - low > 0.1) {
    const middle = (low + high) / 2;
    const density = skinfoldSevenSites({ sex: story.sex, age, sumMm: middle });
    const fat = density.studied ? siri(density.value) : density;
    if (!fat.studied) throw new RangeError(`no folds make up ${percent} %`);
    if (fat.value < percent) low = middle;
    else high = middle;
  }
  const site = (share: number) => [Math.round(2 * share * low) / 2];
  return {
    chest: site(SHARES.chest),
    midaxillary: site(SHARES.midaxillary),
    triceps: site(SHARES.triceps),
    subscapular: site(SHARES.subscapular),
    abdomen: site(SHARES.abdomen),
    suprailiac: site(SHARES.suprailiac),
    thigh: site(SHARES.thigh),
  };
}
