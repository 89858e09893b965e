import { dietBefore, panelReading } from '#core/cycle/blood-now.ts';
import type { PanelReading } from '#core/health/panel/read-panel.ts';
import { panelsIn } from '#core/health/panel/panel-from-journal.ts';
import type { Outcome } from '#core/problems/problem.ts';
import { ledger } from '../../state/open-journal.ts';
import { knownBody } from '../../views/health-view.ts';

/** A panel read against the older ones, the training log and, once the body's answer is there, the eating. */
export function readingOf(panel: string): Outcome<PanelReading> {
  const drawn = panelsIn(ledger.value).find((one) => one.panel === panel)?.drawn.date;
  const body = knownBody.value;
  const diet = body && drawn !== undefined ? dietBefore(body.log, body.answer, drawn) : undefined;
  return panelReading(ledger.value, panel, diet);
}
