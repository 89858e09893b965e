import { BIOTIN_HARMLESS_MG_PER_DAY, BIOTIN_PAUSE_HOURS, biotinBends } from '#core/tables/lab-effects.ts';
import type { SourceKey } from '#core/tables/sources.ts';
import { addDays } from '#core/units/civil-date.ts';
import { keysIn, readLabel, type Product } from '../supplements/read-label.ts';
import { isDue, type Regimen } from '../supplements/regimens.ts';
import type { Concerns, DrawItem, DrawPlanRequest, RegimenPause } from './draw-plan.ts';

interface PauseRule {
  readonly substance: string;
  readonly days: number;
  readonly concerns: readonly string[];
  readonly harmless?: (mgPerDay: number | undefined) => boolean;
  readonly words: string;
  readonly source: SourceKey;
}

const rules: readonly PauseRule[] = [
  {
    substance: 'biotin',
    days: BIOTIN_PAUSE_HOURS / 24,
    concerns: Object.keys(biotinBends),
    harmless: (mg) => mg !== undefined && mg < BIOTIN_HARMLESS_MG_PER_DAY,
    words: `biotin falsifies immunoassays; ${BIOTIN_PAUSE_HOURS} h are commonly advised, none are guaranteed, so tell the laboratory too`,
    source: 'fda-biotin-2019',
  },
  {
    substance: 'iron',
    days: 1,
    concerns: ['iron', 'tsat', 'tibc', 'ferritin'],
    words: 'iron taken within a day shows in the values',
    source: 'draw-practice',
  },
  {
    substance: 'calcium',
    days: 1,
    concerns: ['calcium', 'pth'],
    words: 'calcium taken within a day shows in the values',
    source: 'draw-practice',
  },
  {
    substance: 'potassium',
    days: 1,
    concerns: ['potassium'],
    words: 'a potassium salt taken within a day shows in the values',
    source: 'draw-practice',
  },
  {
    substance: 'caffeine',
    days: 0,
    concerns: ['cortisol', 'glucose', 'insulin'],
    words: 'caffeine moves cortisol and glucose',
    source: 'draw-practice',
  },
];

/** What to leave out before the draw and from when; every other supplement waits on the morning only. */
export function pausesBefore(
  request: DrawPlanRequest,
  concerns: Concerns,
): { readonly items: readonly DrawItem[]; readonly pauses: readonly RegimenPause[] } {
  const items: DrawItem[] = [];
  const pauses: RegimenPause[] = [];
  for (const rule of rules) {
    if (!concerns(rule.concerns)) continue;
    const held = regimensBefore(request, rule.days).flatMap((regimen) => {
      const product = request.products.get(regimen.supplement);
      return product && holds(product, regimen, rule) ? [{ regimen, product }] : [];
    });
    if (held.length === 0) continue;
    const from = addDays(request.draw.date, -rule.days);
    const names = [...new Set(held.map(({ product }) => product.name))].join(', ');
    items.push({
      day: from,
      kind: 'pause',
      words: `Leave out until after the draw: ${names}; ${rule.words}.`,
      source: rule.source,
    });
    for (const { regimen } of held) {
      pauses.push({
        regimen: regimen.regimen,
        from,
        until: request.draw.date,
        reason: `before the blood draw: ${rule.substance}`,
      });
    }
  }
  return { items: [...items, ...creatineItem(request, concerns)], pauses };
}

function holds(product: Product, regimen: Regimen, rule: PauseRule): boolean {
  const parts = readLabel(product).filter(({ key }) => key === rule.substance);
  if (parts.length === 0) return false;
  const perUnit = parts[0]?.perUnit;
  const mg =
    perUnit === undefined ? undefined : perUnit * regimen.units * (parts[0]?.unit === 'ug' ? 0.001 : 1);
  return !rule.harmless?.(mg);
}

/** Creatine need not stop: weeks would be needed, and another marker tells what is asked. */
function creatineItem(request: DrawPlanRequest, concerns: Concerns): DrawItem[] {
  const taken = regimensBefore(request, 7).some((regimen) => {
    const product = request.products.get(regimen.supplement);
    return product !== undefined && keysIn(product).has('creatine');
  });
  if (!taken || !concerns(['creatinine', 'egfrCr2021'])) return [];
  return [
    {
      day: addDays(request.draw.date, -7),
      kind: 'tell',
      words:
        'Creatine need not stop: ask for cystatin C beside creatinine, which creatine raises without harm.',
      source: 'vilar-neto-2020',
    },
  ];
}

/** Regimens that still ask for a dose in the days before the draw. */
function regimensBefore({ regimens, draw }: DrawPlanRequest, days: number): Regimen[] {
  return regimens.filter((regimen) =>
    Array.from({ length: days + 1 }, (_, back) => addDays(draw.date, -back)).some((date) =>
      isDue(regimen, date, undefined),
    ),
  );
}
