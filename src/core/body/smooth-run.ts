import type { Row } from './gaussian.ts';
import { transitionOf } from './day-transition.ts';
import type { LivedDay } from './lived-days.ts';
import type { Part } from './mixture.ts';
import { leanRow, spentRow } from './read-off.ts';
import type { DayParts, FilterRun, Step } from './run-filter.ts';
import { backOverDay, backOverNewScale, backOverUpdate, emptyAdjoint, smoothedAlong } from './smooth.ts';
import { STATE } from './state-layout.ts';

/** Members that hold less than this share of belief at the end do not speak in the smoothed answer. */
const LEAST_WEIGHT = 1e-3;

/**
 * The days of a run in the light of everything up to its last day. Weights are those of the last day; which readings
 * are stray has been judged by the filter.
 */
export function smoothRun(run: FilterRun, days: readonly LivedDay[]): readonly DayParts[] {
  const speaking = run.weights.flatMap((weight, k) => (weight >= LEAST_WEIGHT ? [{ weight, k }] : []));
  const total = speaking.reduce((sum, { weight }) => sum + weight, 0);
  const smoothed = speaking.map(({ weight, k }) => ({
    weight: weight / total,
    days: smoothMember(run.steps[k] ?? [], days),
  }));
  return run.days.map(({ date, ordinary }, index) => {
    const parts = (quantity: keyof SmoothedDay): Part[] =>
      smoothed.map((member) => ({ weight: member.weight, ...(member.days[index]?.[quantity] ?? NOTHING) }));
    return {
      date,
      massKg: parts('massKg'),
      fatKg: parts('fatKg'),
      leanKg: parts('leanKg'),
      maintenanceKcal: parts('maintenanceKcal'),
      ordinary,
    };
  });
}

interface Moments {
  readonly mean: number;
  readonly variance: number;
}
const NOTHING: Moments = { mean: 0, variance: 0 };
const FAT_ROW: Row = { places: [STATE.fat], factors: [1] };

interface SmoothedDay {
  massKg: Moments;
  fatKg: Moments;
  leanKg: Moments;
  maintenanceKcal: Moments;
}

function smoothMember(steps: readonly Step[], days: readonly LivedDay[]): SmoothedDay[] {
  const adjoint = emptyAdjoint();
  const answered = days.map(
    (): SmoothedDay => ({ massKg: NOTHING, fatKg: NOTHING, leanKg: NOTHING, maintenanceKcal: NOTHING }),
  );
  for (const step of steps.toReversed()) {
    if (step.kind === 'predict') backOverDay(adjoint, transitionOf(step.jacobian));
    else if (step.kind === 'update') backOverUpdate(adjoint, step.update);
    else if (step.kind === 'new-scale') backOverNewScale(adjoint);
    else {
      const at = answered[step.day];
      const mass = days[step.day]?.mass;
      if (!at || !mass) continue;
      if (step.what === 'spent') {
        at.maintenanceKcal = smoothedAlong(step.belief, adjoint, spentRow(step.day));
        continue;
      }
      at.massKg = smoothedAlong(step.belief, adjoint, mass);
      at.fatKg = smoothedAlong(step.belief, adjoint, FAT_ROW);
      at.leanKg = smoothedAlong(step.belief, adjoint, leanRow(mass));
    }
  }
  return answered;
}
