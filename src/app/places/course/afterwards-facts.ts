import type { AfterwardsNow, WayBackPace } from '#core/cycle/afterwards-now.ts';
import { shapeOfDay } from '#core/day/shape-of-day.ts';
import { targetsOfDay } from '#core/day/targets-of-day.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { addDays } from '#core/units/civil-date.ts';
import type { NewFact } from '../../state/open-journal.ts';

/** Share of energy as fat on the way back, and protein where no target says any. Common practice, no source. */
const FAT_SHARE = 0.28;
const PROTEIN_G_PER_KG = 1.8;
/** After the show, when a panel and a physician's look belong to the season (two to three months). */
const PANEL_DAYS = 75;

/** The way back adopted: the weeks as planned, targets from each rise on, and a date for the physician. */
export function afterwardsFacts(
  ledger: Ledger,
  now: AfterwardsNow,
  { pace, today, event }: { readonly pace: WayBackPace; readonly today: string; readonly event: string },
): NewFact[] {
  const { show, plan } = now;
  const panel = addDays(show.date, PANEL_DAYS);
  const dated = ledger.of('event-dated').some(({ data }) => data.show === show.show && data.date === panel);
  return [
    {
      kind: 'way-back-adopted',
      data: {
        show: show.show,
        pace,
        weeks: plan.weeks.map(({ from, energyKcal, massKg }) => ({
          from,
          energyKcal,
          lowKg: massKg.low,
          highKg: massKg.high,
        })),
        why: [...plan.why],
      },
    },
    ...targets(ledger, now, today),
    ...(dated || panel <= today
      ? []
      : [
          {
            kind: 'event-dated' as const,
            data: {
              event,
              title: 'Blood panel, and a physician',
              type: 'other' as const,
              date: panel,
              show: show.show,
            },
          },
        ]),
  ];
}

/** One target for each rise of energy, in the order of time: the newest that covers a day counts. */
function targets(ledger: Ledger, { plan, from }: AfterwardsNow, today: string): NewFact[] {
  const tomorrow = addDays(today, 1);
  const usual = targetsOfDay(ledger, today, shapeOfDay(ledger, today)?.dayKind ?? 'rest')?.data;
  const proteinG = Math.round(usual?.proteinG ?? PROTEIN_G_PER_KG * from.massKg);
  const last = plan.weeks.findLastIndex((week) => week.from <= tomorrow);
  const ahead = plan.weeks.slice(Math.max(0, last));
  const rises = ahead.filter((week, k) => k === 0 || week.energyKcal !== ahead[k - 1]?.energyKcal);
  return rises.map((week) => {
    const fatG = Math.round((FAT_SHARE * week.energyKcal) / 9);
    return {
      kind: 'target-set',
      data: {
        from: week.from > tomorrow ? week.from : tomorrow,
        dayKind: 'every',
        basis: 'course',
        proteinG,
        fatG,
        carbohydrateG: Math.max(0, Math.round((week.energyKcal - 4 * proteinG - 9 * fatG) / 4)),
        ...(usual?.fibreMinG !== undefined && { fibreMinG: usual.fibreMinG }),
      },
    };
  });
}
