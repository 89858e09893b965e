import { type RandomStream, randomStream } from '#core/random/random-stream.ts';
import { addDays } from '#core/units/civil-date.ts';
import { type AthleteWorld, drawn } from './athlete-world.ts';
import { type Body, type BodyTruth, livedDay, newBody } from './simulated-body.ts';
import { plannedDay } from './simulated-plan.ts';

/** One row of a request, as the athlete would have written it. */
export interface SimulatedRow {
  date: string;
  weightKg?: number;
  intake?: { energyKcal: number; proteinG: number; carbohydrateG: number; fatG: number; sodiumMg?: number };
  cardioKcal?: number;
  bodyFat?: { percent: number; method: string };
}

/** What really happened on that day. */
export interface SimulatedTruth {
  massKg: number;
  fatKg: number;
  maintenanceLoggedKcal: number;
}

export interface SimulatedAthlete {
  readonly request: {
    readonly id: string;
    readonly athlete: { readonly sex: 'male' | 'female'; readonly heightCm: number; readonly age: number };
    readonly days: readonly SimulatedRow[];
  };
  readonly truth: readonly SimulatedTruth[];
}

/** A seeded cohort of one world: same seed and world, same athletes. */
export function simulateCohort(world: AthleteWorld, seed: number, count: number): SimulatedAthlete[] {
  return Array.from({ length: count }, (_, index) => {
    const stream = randomStream(seed, `${world.name}/athlete ${index}`);
    return simulateAthlete(world, stream, `${world.name}-${seed}-${index}`);
  });
}

function simulateAthlete(world: AthleteWorld, stream: RandomStream, id: string): SimulatedAthlete {
  const male = stream.uniform() >= world.femaleShare;
  const heightCm = (male ? 178 : 165) + 6 * stream.normal();
  const age = 20 + stream.integer(24);
  const fatShare = male ? drawn(stream, [0.11, 0.19]) : drawn(stream, [0.19, 0.28]);
  const leanIndex = (male ? 22.6 : 17.8) + 1.1 * stream.normal();
  const massKg = (leanIndex * (heightCm / 100) ** 2) / (1 - fatShare);
  const dayCount = Math.round(drawn(stream, world.days));
  const body = newBody(world, stream, { male, heightCm, age, massKg, fatShare });
  const plan = world.plans[stream.integer(world.plans.length)] ?? 'steady';
  const habits = habitsOf(world, stream, dayCount);
  const days: SimulatedRow[] = [];
  const truth: SimulatedTruth[] = [];
  const deficitShare = drawn(stream, [0.12, 0.24]);
  const before = plan === 'under-way' ? 30 : 0;
  for (let t = -before; t < dayCount; t++) {
    const eaten = plannedDay(plan, t, dayCount, body.baselineKcal, deficitShare, massKg, stream);
    const lived = livedDay(body, eaten, stream);
    if (t < 0) continue;
    truth.push(truthOf(body, lived, habits.beforeFood));
    days.push(writtenDay(addDays('2027-01-04', t), t, body, eaten, lived, habits, stream));
  }
  return {
    request: {
      id,
      athlete: { sex: male ? 'male' : 'female', heightCm: Math.round(heightCm * 10) / 10, age },
      days,
    },
    truth,
  };
}

interface Habits {
  readonly loggedShare: number;
  readonly logError: number;
  readonly sodiumLogError: number;
  readonly logsSodium: boolean;
  readonly scaleSdKg: number;
  readonly strayShare: number;
  readonly weekKg: number;
  readonly weekPhase: number;
  readonly missingWeights: number;
  readonly missingIntake: number;
  readonly gapFrom: number;
  readonly gapDays: number;
  readonly beforeFood: boolean;
  readonly bodyFatBias: number;
  readonly bodyFatNoise: number;
  readonly bodyFatEvery: number;
  readonly method: string;
}

function habitsOf(world: AthleteWorld, stream: RandomStream, dayCount: number): Habits {
  return {
    loggedShare: drawn(stream, world.loggedShare),
    logError: drawn(stream, world.logError),
    sodiumLogError: drawn(stream, world.sodiumLogError),
    logsSodium: stream.uniform() < world.sodiumLoggedShare,
    scaleSdKg: drawn(stream, world.scaleSdKg),
    strayShare: drawn(stream, world.strayShare),
    weekKg: drawn(stream, world.weekRhythmKg),
    weekPhase: stream.uniform() * 2 * Math.PI,
    missingWeights: drawn(stream, world.missingWeights),
    missingIntake: drawn(stream, world.missingIntake),
    gapFrom: 20 + stream.integer(Math.max(1, dayCount - 30)),
    gapDays: stream.uniform() < world.gapShare ? 4 + stream.integer(5) : 0,
    beforeFood: stream.uniform() < world.beforeFoodShare,
    bodyFatBias: world.bodyFatBiasSd * stream.normal(),
    bodyFatNoise: drawn(stream, world.bodyFatNoise),
    bodyFatEvery: world.bodyFatEveryDays[stream.integer(world.bodyFatEveryDays.length)] ?? 14,
    method: ['skinfold', 'skinfold', 'dxa', 'impedance'][stream.integer(4)] ?? 'skinfold',
  };
}

function truthOf(body: Body, lived: BodyTruth, beforeFood: boolean): SimulatedTruth {
  const at = beforeFood ? lived.before : lived.after;
  return {
    massKg: at.massKg,
    fatKg: at.fatKg,
    maintenanceLoggedKcal: lived.spentKcal * body.loggedShare,
  };
}

function writtenDay(
  date: string,
  t: number,
  body: Body,
  eaten: ReturnType<typeof plannedDay>,
  lived: BodyTruth,
  habits: Habits,
  stream: RandomStream,
): SimulatedRow {
  const row: SimulatedRow = { date };
  const inGap = t >= habits.gapFrom && t < habits.gapFrom + habits.gapDays;
  const at = habits.beforeFood ? lived.before : lived.after;
  if (!inGap && stream.uniform() >= habits.missingWeights) {
    const stray = stream.uniform() < habits.strayShare ? 2 * stream.normal() : 0;
    const week = habits.weekKg * Math.cos((2 * Math.PI * t) / 7 + habits.weekPhase);
    const read = at.massKg + at.gutKg + week + habits.scaleSdKg * stream.normal() + stray;
    row.weightKg = Math.round(read * 10) / 10;
  }
  if (stream.uniform() >= habits.missingIntake) row.intake = writtenIntake(eaten, body, habits, stream);
  row.cardioKcal = Math.max(0, Math.round(eaten.cardioKcal));
  if (t % habits.bodyFatEvery === Math.min(3, habits.bodyFatEvery - 1) && habits.bodyFatEvery < dayLimit) {
    const percent = (100 * at.fatKg) / at.massKg + habits.bodyFatBias + habits.bodyFatNoise * stream.normal();
    row.bodyFat = { percent: Math.max(3.5, Math.round(percent * 10) / 10), method: habits.method };
  }
  return row;
}

/** Longer than any preparation: such an athlete never measures body fat. */
const dayLimit = 300;

function writtenIntake(
  eaten: ReturnType<typeof plannedDay>,
  body: Body,
  habits: Habits,
  stream: RandomStream,
): NonNullable<SimulatedRow['intake']> {
  const factor = body.loggedShare * (1 + habits.logError * stream.normal());
  const carbohydrateG = eaten.carbohydrateG * factor * (1 + 0.04 * stream.normal());
  const energyKcal = eaten.energyKcal * factor;
  const proteinG = eaten.proteinG * factor;
  return {
    energyKcal: Math.round(energyKcal),
    proteinG: Math.round(proteinG),
    carbohydrateG: Math.round(carbohydrateG),
    fatG: Math.max(0, Math.round((energyKcal - 4 * (proteinG + carbohydrateG)) / 9)),
    ...(habits.logsSodium
      ? {
          sodiumMg: Math.max(
            0,
            Math.round(eaten.sodiumMg * body.loggedShare * (1 + habits.sodiumLogError * stream.normal())),
          ),
        }
      : {}),
  };
}
