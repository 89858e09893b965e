import type { MachineGeometry } from '#core/journal/kinds/gym-equipment.ts';
import type { Kilograms, NewtonMetres, Percent } from '#core/units/quantities.ts';
import { emphasisOf, thirdsOf } from './emphasis.ts';
import {
  hardest,
  leverLoad,
  passesOverAt,
  STANDARD_GRAVITY,
  workBetween,
  type LeverLoad,
} from './lever-torque.ts';
import type { Emphasis } from './torque-request.ts';

export type LeverMachine = Extract<MachineGeometry, { of: 'lever' }>;

/** Plates on a loading point: all of them, both sides of a two-sided machine together. */
export interface PegLoad {
  readonly peg: string;
  readonly kg: Kilograms;
}

/** What a loading of a described lever asks, in figures that compare across pegs. */
export interface LoadingFigures {
  readonly meanNm: NewtonMetres;
  readonly peakNm: NewtonMetres;
  readonly peakDeg: number;
  /** Force at the pad, averaged over the work, as kilograms held against gravity: comparable across pegs. */
  readonly padKg: Kilograms;
  readonly thirdsPercent: readonly [Percent, Percent, Percent];
  readonly emphasis: Emphasis;
  readonly passesOverDeg: number | undefined;
}

/** Figures of a loading; undefined where a peg is named that the machine does not have. */
export function figuresOf(machine: LeverMachine, pegs: readonly PegLoad[]): LoadingFigures | undefined {
  const load = loadOf(machine, pegs);
  if (!load) return undefined;
  const { range, padM } = machine;
  const meanNm = meanTorque(load, machine);
  const peak = hardest(load, range);
  const thirdsPercent = thirdsOf(load, range);
  return {
    meanNm,
    peakNm: peak.torqueNm,
    peakDeg: peak.deg,
    padKg: meanNm / padM / STANDARD_GRAVITY,
    thirdsPercent,
    emphasis: emphasisOf(thirdsPercent),
    passesOverDeg: passesOverAt(load, range),
  };
}

function loadOf(machine: LeverMachine, pegs: readonly PegLoad[]): LeverLoad | undefined {
  const masses = [machine.lever];
  for (const { peg, kg } of pegs) {
    const place = machine.pegs.find(({ name }) => name === peg);
    if (!place) return undefined;
    masses.push({ massKg: kg, radiusM: place.radiusM, angleDeg: place.angleDeg });
  }
  return leverLoad(masses);
}

function meanTorque(load: LeverLoad, { range }: LeverMachine): NewtonMetres {
  return workBetween(load, range) / (((range.toDeg - range.fromDeg) * Math.PI) / 180);
}

/** The heaviest peg load that is looked for. */
const HEAVIEST_KG: Kilograms = 1000;

/**
 * How much on one peg alone asks the same as a loading: equal work over the range (torque is linear in the mass, so
 * exactly), or equal peak (found by halving: the peak grows with the mass). Undefined where no mass up to 1000 kg
 * does, for instance on a peg that works against the lift.
 */
export function equalOnPeg(
  machine: LeverMachine,
  pegs: readonly PegLoad[],
  peg: string,
): { readonly equalWorkKg: Kilograms | undefined; readonly equalPeakKg: Kilograms | undefined } | undefined {
  const wanted = figuresOf(machine, pegs);
  const bare = figuresOf(machine, []);
  const withOne = figuresOf(machine, [{ peg, kg: 1 }]);
  if (!wanted || !bare || !withOne) return undefined;
  const massKg = (wanted.meanNm - bare.meanNm) / (withOne.meanNm - bare.meanNm);
  const peakOf = (kg: Kilograms) => figuresOf(machine, [{ peg, kg }])?.peakNm ?? 0;
  return {
    equalWorkKg: Number.isFinite(massKg) && massKg >= 0 && massKg <= HEAVIEST_KG ? massKg : undefined,
    equalPeakKg: byHalving(peakOf, wanted.peakNm),
  };
}

function byHalving(peakOf: (kg: Kilograms) => NewtonMetres, wanted: NewtonMetres): Kilograms | undefined {
  if (peakOf(0) > wanted || peakOf(HEAVIEST_KG) < wanted) return undefined;
  let [low, high] = [0, HEAVIEST_KG];
  // 60 halvings of 1000 kg leave less than a number can show.
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (peakOf(middle) < wanted) low = middle;
    else high = middle;
  }
  return high;
}

export interface PegEmphasis {
  readonly peg: string;
  readonly figures: LoadingFigures;
}

/**
 * Which peg moves the same plates' work to the start, the middle and the end of the movement. The work of each third
 * is linear in the masses, so the extremes are all plates on one peg; loadings over several pegs lie between.
 */
export function pegsByEmphasis(
  machine: LeverMachine,
  totalKg: Kilograms,
): { readonly start: PegEmphasis; readonly middle: PegEmphasis; readonly end: PegEmphasis } | undefined {
  const alone = machine.pegs.flatMap(({ name }) => {
    const figures = figuresOf(machine, [{ peg: name, kg: totalKg }]);
    return figures && figures.thirdsPercent.some((share) => share > 0) ? [{ peg: name, figures }] : [];
  });
  const most = (third: 0 | 1 | 2) =>
    alone.reduce<PegEmphasis | undefined>(
      (best, each) =>
        best && best.figures.thirdsPercent[third] >= each.figures.thirdsPercent[third] ? best : each,
      undefined,
    );
  const [start, middle, end] = [most(0), most(1), most(2)];
  return start && middle && end ? { start, middle, end } : undefined;
}
