import type { Concerns, DrawItem, DrawPlanRequest } from './draw-plan.ts';

/** The morning of the draw, and the hour after it. */
export function morningItems(request: DrawPlanRequest, concerns: Concerns): DrawItem[] {
  const { draw } = request;
  const day = draw.date;
  const food = draw.fasting ? ', no food' : '';
  const place = draw.laboratory === undefined ? '' : ` at ${draw.laboratory}`;
  return [
    {
      day,
      kind: 'morning',
      words: `No coffee, no supplements, no cardio and no training before the draw${food}; a glass or two of water as usual.`,
      source: 'draw-practice',
    },
    {
      day,
      kind: 'morning',
      words: 'Sit for 15 minutes before the needle: after standing, cells and protein read 5 to 10 % higher.',
      source: 'draw-practice',
    },
    {
      day,
      at: draw.at,
      kind: 'draw',
      words: `Blood draw${place}. Say what you take, biotin above all, when you trained hard last and when you ate.`,
      source: 'draw-practice',
    },
    {
      day,
      at: draw.at,
      kind: 'after',
      words:
        'After it: eat and drink, take what was left out this morning, and write down the time, the fast and the hours since hard training.',
      source: 'draw-practice',
    },
    ...medicineItem(request, concerns),
  ];
}

/** A medicine is never stopped for a draw by this tool. */
function medicineItem({ draw, medicines }: DrawPlanRequest, concerns: Concerns): DrawItem[] {
  if (medicines.length === 0) return [];
  const names = [...new Set(medicines.map(({ name }) => name))].join(', ');
  const thyroid = concerns(['tsh', 'ft4']) && medicines.some(({ name }) => /thyrox/i.test(name));
  const ask = thyroid ? ' Ask whether levothyroxine comes before or after the draw.' : '';
  return [
    {
      day: draw.date,
      kind: 'tell',
      words: `Prescribed medicines (${names}) as prescribed; nothing is stopped for a draw without the prescriber.${ask}`,
      source: 'drug-labels',
    },
  ];
}
