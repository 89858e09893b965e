import type { Kilocalories } from '../units/quantities.ts';
import type { PlateProblem, PlateSteps } from './plate-problem.ts';

/** How far a solver may go, and whom it tells. */
export interface SolveLimits {
  /** Time the whole answer may take; a solver turns it into a number of steps, so that a replay is the same. */
  readonly budgetMs: number;
  /** The emergency brake: below zero, the solver hands over what it has. */
  readonly timeLeftMs: () => number;
  /** Told of each better plan as it is found. */
  readonly onBetter?: (steps: PlateSteps) => void;
}

/** What a solver answers to a plate problem. */
export interface PlateAnswer {
  /** Whole steps that keep every limit of the problem. */
  readonly steps: PlateSteps;
  /** No plan costs less than this; minus infinity where nothing was proved. */
  readonly bound: Kilocalories;
  /** "searched" to its end, or until its "steps" were used up, or until the "clock" ran out (a replay may then differ). */
  readonly ended: 'searched' | 'steps' | 'clock';
}

/** The port of day to whoever can solve plate problems: `src/outside/solver/` in the app, a plain one in tests. */
export type PlateSolver = (problem: PlateProblem, limits: SolveLimits) => PlateAnswer;
