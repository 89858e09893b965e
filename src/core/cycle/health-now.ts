import type { EstimateAnswer, EstimateRequest } from '../body/estimate-request.ts';
import type { DrawPlan } from '../health/draw/draw-plan.ts';
import type { PanelReading } from '../health/panel/read-panel.ts';
import type { EnergyScreen } from '../health/recovery/energy-screen.ts';
import type { Ledger } from '../journal/ledger.ts';
import type { Outcome } from '../problems/problem.ts';
import { bloodNow, dietBefore, panelReading, type BloodNow } from './blood-now.ts';
import { drawAhead, drawPlanOf, type DrawAhead } from './draw-now.ts';
import { availabilityOf, energyScreenNow, recoveryNow, type RecoveryNow } from './recovery-now.ts';
import { supplementsNow, type ProductNow } from './supplements-now.ts';

/** What Health shows when it is opened. */
export interface HealthNow {
  readonly products: readonly ProductNow[];
  readonly blood: BloodNow;
  /** The newest panel; a value of it that needs care now stands before everything else. */
  readonly newest?: Outcome<PanelReading>;
  readonly urgent: readonly string[];
  readonly draw?: DrawAhead;
  readonly drawPlan?: DrawPlan;
  readonly recovery: RecoveryNow;
  readonly screen?: EnergyScreen;
}

/** The body as the estimate last answered; absent while it is being worked out. */
export interface KnownBody {
  readonly log: EstimateRequest;
  readonly answer: EstimateAnswer;
}

/** Everything Health shows, out of the journal and a day (HLT-18). */
export function healthNow(ledger: Ledger, today: string, body?: KnownBody): HealthNow {
  const blood = bloodNow(ledger, today);
  const last = blood.panels[0];
  const newest =
    last && panelReading(ledger, last.panel, body && dietBefore(body.log, body.answer, last.drawn.date));
  const draw = drawAhead(ledger, today);
  const drawPlan = draw && drawPlanOf(ledger, draw.data, today);
  const screen = energyScreenNow(ledger, today, {
    availability: body && availabilityOf(body.log, body.answer, today),
    panel: newest?.ok ? newest.value : undefined,
  });
  return {
    products: supplementsNow(ledger, today),
    blood,
    ...(newest && { newest }),
    urgent: newest?.ok ? newest.value.cautions.filter(({ urgent }) => urgent).map(({ words }) => words) : [],
    ...(draw && { draw }),
    ...(drawPlan && { drawPlan }),
    recovery: recoveryNow(ledger, today),
    ...(screen && { screen }),
  };
}
