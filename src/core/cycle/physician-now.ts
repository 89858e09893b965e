import type { SheetCircumstances } from '../health/draw/physician-sheet.ts';
import { cyclesIn } from '../health/recovery/recovery-notes.ts';
import { weeklyRecovery } from '../health/recovery/weekly-recovery.ts';
import type { Ledger } from '../journal/ledger.ts';
import { addDays } from '../units/civil-date.ts';

/** What the journal knows of the week before a draw: training, cardio, how it felt, the last menses (HLT-53). */
export function circumstancesOf(ledger: Ledger, drawnOn: string): SheetCircumstances {
  const from = addDays(drawnOn, -7);
  const within = ({ day }: { readonly day: string }) => day >= from && day < drawnOn;
  const sets = ledger.of('set-done');
  const sessions = new Set(sets.filter(within).map(({ day }) => day)).size;
  const cardio = ledger.of('cardio-done').filter(within);
  const minutes = cardio.reduce((sum, { data }) => sum + data.minutes, 0);
  const lastMenses = cyclesIn(ledger, drawnOn).began.at(-1);
  const week = weeklyRecovery(ledger, from);
  return {
    training: [
      sets.length === 0
        ? 'Resistance training: not logged'
        : `Resistance training on ${sessions} of the seven days before`,
      `Cardio: ${minutes} min in ${cardio.length} sessions`,
    ],
    feelings: [
      ...(week.measures.length > 0 ? week.why : []),
      ...(lastMenses === undefined ? [] : [`Last menses began ${lastMenses}`]),
    ],
  };
}
