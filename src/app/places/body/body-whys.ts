import type { BodyNow } from '#core/cycle/body-now.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { Why } from '../../parts/why.ts';
import { sourceWords } from '../../views/source-words.ts';

/** Half width of a 90 % interval in standard deviations. */
export const NINETY = 1.645;

const SOURCE = ['hall-2011', 'mifflin-1990', 'helms-2014'].filter((key) => sourceWords(key) !== key);

export type Quantity = 'mass' | 'fat' | 'percent' | 'lean' | 'maintenance';

const TITLES: Readonly<Record<Quantity, string>> = {
  mass: 'Body mass',
  fat: 'Fat',
  percent: 'Body fat',
  lean: 'Lean mass',
  maintenance: 'Maintenance',
};

const WHAT: Readonly<Record<Quantity, string>> = {
  mass: 'What the body weighs without gut content and without the scale’s own error. One reading moves with salt, carbohydrate and gut; all of them together say where the body is.',
  fat: 'Fat follows the balance of what is eaten and spent. What ties it down is a measured body fat: folds, tape, a scan; each is read with its method’s own bias and error.',
  percent: 'Fat as a share of body mass.',
  lean: 'All that is not fat: muscle, organs, bone, and the water in them.',
  maintenance:
    'What keeps the balance, in kilocalories as you log them, averaged over the last seven days, cardio included. If you log a little under the truth, it stands a little under the truth too, and the plan stays right.',
};

/** Which of the estimate's sentences speak of a quantity. */
const SPEAKS: Readonly<Record<Quantity, RegExp>> = {
  mass: /whole-body mass|weigh-ins|off the course|left out|pounds|scale is read/,
  fat: /^Fat is|tissue lost|body-fat|moved by/,
  percent: /^Fat is|body-fat/,
  lean: /tissue lost|^Fat is/,
  maintenance: /maintenance|log averages|not logged|Expenditure|0 kcal|usual/,
};

const FORMULAS: Readonly<Partial<Record<Quantity, string>>> = {
  mass: 'scale = fat + lean + glycogen with its water + fluid + gut + error of the scale',
  percent: 'body fat = 100 × fat / body mass',
  lean: 'lean = body mass - fat',
  maintenance: 'spent = eaten - energy of the tissue gained',
};

/** Why a believed quantity is what it is, with how sure it is. */
export function whyOf(quantity: Quantity, now: BodyNow, within: string): Why {
  const { answer, log } = now;
  return {
    title: TITLES[quantity],
    sentences: [WHAT[quantity], ...answer.why.filter((sentence) => SPEAKS[quantity].test(sentence))],
    formula: FORMULAS[quantity],
    inputs: [
      { name: 'Weigh-ins', value: String(log.weighIns) },
      { name: 'Days with a full log of food', value: `${log.loggedDays} of ${log.days}` },
    ],
    source: SOURCE.map(sourceWords),
    uncertainty: `9 times of 10 it is within ${within} of this.`,
  };
}

/** "1.2 kg". */
export function withinWords(sd: number, unit: string, decimals: number): string {
  return `${roundTo(NINETY * sd, decimals)} ${unit}`;
}
