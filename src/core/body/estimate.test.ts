import { parse } from 'valibot';
import { describe, expect, it } from 'vitest';
import { addDays } from '#core/units/civil-date.ts';
import { ordinaryWorld } from '../../../test/simulation/athlete-world.ts';
import { simulateCohort } from '../../../test/simulation/athlete-simulator.ts';
import { answerEstimate } from './estimate.ts';
import {
  type EstimateAnswer,
  estimateAnswer,
  type EstimateDay,
  type EstimateRequest,
} from './estimate-request.ts';

const [simulated] = simulateCohort({ ...ordinaryWorld, femaleShare: 0, plans: ['refeeds'] }, 7, 1);
if (!simulated) throw new Error('no athlete');
const request: EstimateRequest = { ...simulated.request, days: [...simulated.request.days] };
const START = request.days[0]?.date ?? '';

function answerOf(asked: unknown, smooth = false): EstimateAnswer {
  const outcome = answerEstimate(asked, smooth);
  if (!outcome.ok) throw new Error(`${outcome.problem.path}: ${outcome.problem.message}`);
  return outcome.value;
}

/** A plain log: so many days of the same food, mass falling evenly. */
function evenLog(
  days: number,
  change: (day: EstimateDay, i: number) => EstimateDay = (day) => day,
): EstimateRequest {
  return {
    athlete: { sex: 'male', heightCm: 178, age: 30 },
    days: Array.from({ length: days }, (_, i) =>
      change(
        {
          date: addDays('2027-01-04', i),
          weightKg: Math.round(10 * (86 - 0.07 * i)) / 10,
          intake: { energyKcal: 2300, proteinG: 185, carbohydrateG: 220, fatG: 75, sodiumMg: 3800 },
        },
        i,
      ),
    ),
  };
}
const lastOf = (answer: EstimateAnswer) => {
  const last = answer.days.at(-1);
  if (!last) throw new Error('no day');
  return last;
};

describe('the answer', () => {
  const answer = answerOf(request);

  it("[EST-01] keeps the contract's shape, echoes the id, answers every date, and says why in plain sentences", () => {
    expect(parse(estimateAnswer, answer)).toEqual(answer);
    expect(answer.id).toBe(request.id);
    expect(answer.days.map(({ date }) => date)).toEqual(request.days.map(({ date }) => date));
    expect(answer.why.length).toBeGreaterThan(5);
    for (const sentence of answer.why) expect(sentence).toMatch(/^[^a-z].*[.?]$/);
  });

  it('[EST-01] whole-body mass is fat and lean', () => {
    for (const { massKg, fatKg, leanKg } of answer.days)
      expect(fatKg.mean + leanKg.mean).toBeCloseTo(massKg.mean, 3);
  });

  it('[EST-01] a day knows only what was known on it: later rows change nothing before them', () => {
    for (const cut of [1, 12, 40, 77]) {
      const early = answerOf({ ...request, days: request.days.slice(0, cut) });
      expect(early.days).toEqual(answer.days.slice(0, cut));
    }
  });

  it('[EST-02] weights and body fat after asOf are not looked at, however absurd', () => {
    const asOf = addDays(START, 55);
    const spoilt = request.days.map((day) =>
      day.date > asOf ? { ...day, weightKg: 45, bodyFat: { percent: 60, method: 'dxa' } } : day,
    );
    const clean = request.days.map(({ weightKg, bodyFat, ...day }) =>
      day.date > asOf
        ? day
        : { ...day, ...(weightKg === undefined ? {} : { weightKg }), ...(bodyFat ? { bodyFat } : {}) },
    );
    expect(answerOf({ ...request, days: spoilt, asOf })).toEqual(answerOf({ ...request, days: clean, asOf }));
  });

  it('[EST-02] food after asOf is known: more of it means more mass, and the interval widens with time', () => {
    const asOf = addDays(START, 55);
    const fed = request.days.map((day) =>
      day.date > asOf && day.intake
        ? {
            ...day,
            intake: { ...day.intake, energyKcal: day.intake.energyKcal + 500, fatG: day.intake.fatG + 55 },
          }
        : day,
    );
    const [plain, more] = [answerOf({ ...request, asOf }), answerOf({ ...request, days: fed, asOf })];
    expect(plain.days).toHaveLength(56);
    expect(plain.forecast).toHaveLength(request.days.length - 56);
    const [end, richer] = [plain.forecast.at(-1), more.forecast.at(-1)];
    const week = plain.forecast[6];
    if (!end || !richer || !week) throw new Error('no forecast');
    expect(richer.massKg.mean).toBeGreaterThan(end.massKg.mean + 0.5);
    expect(end.massKg.q95 - end.massKg.q05).toBeGreaterThan(week.massKg.q95 - week.massKg.q05);
  });

  it('[EST-15] smoothed: the last day agrees with the filter, earlier days are known better', () => {
    const smooth = answerOf(request, true);
    const [a, b] = [lastOf(smooth), lastOf(answer)];
    expect(a.massKg.mean).toBeCloseTo(b.massKg.mean, 2);
    expect(a.maintenanceKcal.mean).toBeCloseTo(b.maintenanceKcal.mean, 0);
    const [early, known] = [smooth.days[30], answer.days[30]];
    expect(early?.massKg.sd).toBeLessThan(known?.massKg.sd ?? 0);
    expect(early?.fatKg.sd).toBeLessThan((known?.fatKg.sd ?? 0) + 1e-6);
    expect(early?.maintenanceKcal.sd).toBeLessThan(known?.maintenanceKcal.sd ?? 0);
    const error = (answered: EstimateAnswer) =>
      answered.days
        .slice(14)
        .reduce((sum, { massKg }, i) => sum + (massKg.mean - (simulated.truth[i + 14]?.massKg ?? 0)) ** 2, 0);
    expect(error(smooth)).toBeLessThan(error(answer));
  });

  it('[EST-01] the same request gives the same bytes', () => {
    expect(JSON.stringify(answerOf(request))).toBe(JSON.stringify(answer));
  });
});

describe('little and odd evidence', () => {
  it('[EST-14] two days are answered with wide intervals, not refused', () => {
    const last = lastOf(answerOf(evenLog(2)));
    expect(last.massKg.sd).toBeLessThan(0.6);
    expect(last.fatKg.sd).toBeGreaterThan(3);
    expect(last.maintenanceKcal.sd).toBeGreaterThan(250);
  });

  it('[EST-14] one row with nothing on it is answered from height alone', () => {
    const { athlete } = evenLog(1);
    const last = lastOf(answerOf({ athlete, days: [{ date: '2027-01-04' }] }));
    expect(last.massKg.sd).toBeGreaterThan(8);
  });

  it('[EST-14] a single weigh-in is told as one, and asked about where it would make sense in pounds', () => {
    const { athlete } = evenLog(1);
    const why = answerOf({ athlete, days: [{ date: '2027-01-04', weightKg: 187 }] }).why.join(' ');
    expect(why).toContain('The log holds 1 weigh-in, 0 logged days and 0 body-fat readings over 1 day.');
    expect(why).toContain('187 kg on 2027-01-04 would be 84.8 kg if it were pounds (used as typed)');
  });

  it('[EST-14] no weigh-in at first: the days before it stay wide, the days after are known', () => {
    const answer = answerOf(
      evenLog(20, ({ weightKg, ...day }, i) =>
        i < 8 ? day : { ...day, ...(weightKg === undefined ? {} : { weightKg }) },
      ),
    );
    expect(answer.days[7]?.massKg.sd).toBeGreaterThan(8);
    expect(answer.days[8]?.massKg.sd).toBeLessThan(1);
  });

  it('[EST-01] a gap in the rows is answered, wider than the days about it', () => {
    const gap = evenLog(60);
    const answer = answerOf({ ...gap, days: gap.days.filter((_, i) => i < 30 || i >= 44) });
    expect(answer.days).toHaveLength(60);
    expect(answer.days[43]?.massKg.sd).toBeGreaterThan(2 * (answer.days[29]?.massKg.sd ?? 0));
    expect(answer.days[50]?.massKg.sd).toBeLessThan(answer.days[43]?.massKg.sd ?? 0);
  });

  it('[EST-03] a day of 0 kcal is said to be unclear and never taken as a fast', () => {
    const zero = evenLog(40, (day, i) =>
      i === 30 ? { ...day, intake: { energyKcal: 0, proteinG: 0, carbohydrateG: 0, fatG: 0 } } : day,
    );
    const answer = answerOf(zero);
    expect(answer.why.join(' ')).toContain('2027-02-03 is logged as 0 kcal: a fast, or a log left empty?');
    const known = lastOf(answerOf(evenLog(40))).maintenanceKcal.mean;
    expect(Math.abs(lastOf(answer).maintenanceKcal.mean - known)).toBeLessThan(40);
  });

  it('[EST-07] a wrong scale, shoes and a slip hardly move the mass, and are named', () => {
    const plain = lastOf(answerOf(evenLog(40)));
    const stray = answerOf(evenLog(40, (day, i) => (i === 36 ? { ...day, weightKg: 86.6 } : day)));
    expect(Math.abs(lastOf(stray).massKg.mean - plain.massKg.mean)).toBeLessThan(0.2);
    expect(stray.why.join(' ')).toContain('86.6 kg on 2027-02-09');
  });

  it('[EST-07] three in a row on one side are a new level, and are believed', () => {
    const moved = lastOf(
      answerOf(evenLog(50, (day, i) => (i >= 40 ? { ...day, weightKg: (day.weightKg ?? 0) + 2 } : day))),
    );
    const plain = lastOf(answerOf(evenLog(50)));
    expect(moved.massKg.mean - plain.massKg.mean).toBeGreaterThan(1.5);
  });

  it('[EST-60] pounds among kilograms are left out and asked about', () => {
    const pounds = answerOf(evenLog(40, (day, i) => (i === 20 ? { ...day, weightKg: 186.3 } : day)));
    const without = answerOf(
      evenLog(40, ({ weightKg, ...day }, i) =>
        i === 20 ? day : { ...day, ...(weightKg === undefined ? {} : { weightKg }) },
      ),
    );
    expect(pounds.days).toEqual(without.days);
    expect(pounds.why.join(' ')).toContain(
      '186.3 kg on 2027-01-24 would be 84.5 kg if it were pounds (left out): typed in pounds? Say so or correct it.',
    );
  });

  it('[EST-14] a body fat of 3 % is read with its error, and said to be less than a body keeps in health', () => {
    const low = answerOf(
      evenLog(30, (day, i) => (i === 5 ? { ...day, bodyFat: { percent: 3, method: 'skinfold' } } : day)),
    );
    expect(low.why.join(' ')).toContain('3 % on 2027-01-09: below 4 % body fat');
    expect(lastOf(low).fatKg.mean).toBeGreaterThan(4);
  });
});

describe('what else is known', () => {
  it('[EST-05] two methods have a bias each: their difference of five points does not become fat', () => {
    const readings = evenLog(60, (day, i) => {
      if (i % 14 === 3) return { ...day, bodyFat: { percent: 14, method: 'skinfold' } };
      return i % 14 === 4 ? { ...day, bodyFat: { percent: 19, method: 'impedance' } } : day;
    });
    const percents = answerOf(readings)
      .days.slice(10)
      .map(({ fatKg, massKg }) => (100 * fatKg.mean) / massKg.mean);
    for (const [i, percent] of percents.entries()) {
      expect(percent).toBeGreaterThan(12);
      expect(Math.abs(percent - (percents[i - 1] ?? percent))).toBeLessThan(1.5);
    }
  });

  it('[EST-06] strength kept moves the lean share of loss: more kept, less lean lost', () => {
    const leanAt = (strengthKept: number) =>
      lastOf(answerOf({ ...evenLog(100), leanEvidence: { strengthKept, sd: 0.02 } })).leanKg.mean;
    const without = lastOf(answerOf(evenLog(100))).leanKg.mean;
    expect(leanAt(1.02)).toBeGreaterThan(without);
    expect(leanAt(0.8)).toBeLessThan(without);
    expect(leanAt(1.02) - leanAt(0.8)).toBeLessThan(3);
  });

  it('[EST-13] creatine: a kilogram in ten days is water when its start is known', () => {
    const risen = evenLog(60, (day, i) => ({
      ...day,
      weightKg: (day.weightKg ?? 0) + (i < 40 ? 0 : 1.3 * (1 - Math.exp(-(i - 39) / 9))),
    }));
    const told = { ...risen, athlete: { ...risen.athlete, creatineFrom: risen.days[40]?.date } };
    const fatRise = (asked: EstimateRequest) =>
      lastOf(answerOf(asked)).fatKg.mean - lastOf(answerOf(evenLog(60))).fatKg.mean;
    expect(Math.abs(fatRise(told))).toBeLessThan(Math.abs(fatRise(risen)) + 0.05);
    const spent = (asked: EstimateRequest) => lastOf(answerOf(asked)).maintenanceKcal.mean;
    const plain = spent(evenLog(60));
    expect(Math.abs(spent(told) - plain)).toBeLessThan(Math.abs(spent(risen) - plain));
  });

  it('[EST-13] a journey with another scale: its offset is forgotten at home', () => {
    const away = evenLog(50, (day, i) =>
      i >= 30 && i < 37 ? { ...day, weightKg: (day.weightKg ?? 0) + 1.5, travelling: true } : day,
    );
    const plain = answerOf(evenLog(50));
    const told = answerOf(away);
    expect(Math.abs((told.days[36]?.massKg.mean ?? 0) - (plain.days[36]?.massKg.mean ?? 0))).toBeLessThan(
      0.6,
    );
    expect(Math.abs(lastOf(told).massKg.mean - lastOf(plain).massKg.mean)).toBeLessThan(0.1);
  });

  it('[EST-13] a logged cycle: the rise about menses is water, not a stop in losing fat', () => {
    const cycling = (logged: boolean): EstimateRequest => {
      const log = evenLog(90, (day, i) => {
        const phase = (i + 10) % 28;
        const rise = 0.7 * Math.exp(-0.5 * (Math.min(phase, 28 - phase) / 4) ** 2);
        return {
          ...day,
          weightKg: (day.weightKg ?? 0) - 24 + rise,
          ...(logged && phase === 0 ? { cycleDay: 1 } : {}),
        };
      });
      return { ...log, athlete: { ...log.athlete, sex: 'female', heightCm: 166 } };
    };
    const swing = (answer: EstimateAnswer) => {
      const spent = answer.days.slice(60).map(({ maintenanceKcal }) => maintenanceKcal.mean);
      return Math.max(...spent) - Math.min(...spent);
    };
    expect(swing(answerOf(cycling(true)))).toBeLessThan(swing(answerOf(cycling(false))));
  });

  it('[EST-12] when the scale is read is told by the readings themselves, or by the request', () => {
    const plain = answerOf(request).why.join(' ');
    expect(plain).toContain("The readings make it 0 % likely that the scale is read before the day's food.");
    const told = answerOf({ ...request, athlete: { ...request.athlete, weighed: 'before-food' } }).why.join(
      ' ',
    );
    expect(told).toContain('100 % likely');
  });
});
