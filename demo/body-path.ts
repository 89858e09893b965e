import { randomStream } from '#core/random/random-stream.ts';
import { type LoggedDay, loggedDay } from './logged-days.ts';
import { story } from './story.ts';
import { reference, type TrueEnergy, type TrueMorning, trueBody } from './true-body.ts';

/** One invented morning: what the scale and the tape say, what was logged that day, and what was true. */
export interface BodyDay {
  readonly scaleKg: number;
  readonly waistCm: number;
  /** Her true body fat, which no method reads exactly. */
  readonly fatPercent: number;
  readonly logged: LoggedDay;
  readonly truth: TrueMorning & TrueEnergy;
}

/** Of the first twenty draws of her chances the one that tells the story most plainly. */
const DRAW = 12;
const START_WAIST_CM = 73.5;
/** Waist for each kilogram of fat, and how tape and scale err. Invented. */
const WAIST_CM_PER_KG = 1.3;
const READING_SD = { waistCm: 0.3, scaleKg: 0.12 } as const;

/**
 * Every morning of the story, the last that of its today: the scale reads a body that lives by the tool's own model of
 * a day on what was eaten, and the log holds what she wrote of it.
 */
export function bodyPath(seed: number): readonly BodyDay[] {
  const [lived, logs, readings] = [
    randomStream(seed, `demo body ${DRAW}`),
    randomStream(seed, 'demo log'),
    randomStream(seed, `demo readings ${DRAW}`),
  ];
  const body = trueBody(lived);
  return Array.from({ length: 7 * story.weeks + 1 }, (_, number) => {
    const morning = body.morning();
    const scaleKg = morning.massKg + body.gutKg() + READING_SD.scaleKg * readings.normal();
    const slimmer = WAIST_CM_PER_KG * (reference.fatKg - morning.fatKg);
    const logged = loggedDay(number, logs);
    return {
      scaleKg,
      waistCm: START_WAIST_CM - slimmer + READING_SD.waistCm * readings.normal(),
      fatPercent: (100 * morning.fatKg) / morning.massKg,
      logged,
      truth: { ...morning, ...body.live(logged) },
    };
  });
}
