import type { PanelView } from './panel-view.ts';
import type { Note, PanelResult } from './reading.ts';

const fallsInDeficit = [
  'ft3',
  't3',
  'testosterone',
  'freeTestosterone',
  'lh',
  'fsh',
  'igf1',
  'estradiol',
  'wbc',
  'insulin',
];
const risesInDeficit = ['shbg', 'cortisol', 'cholesterol', 'ldlCalc'];

/** What an energy deficit and much protein do to a value. */
export function notesOfDiet(view: PanelView, result: PanelResult): Note[] {
  const key = result.read.known?.analyte.key ?? '';
  const deficit = view.request.diet?.deficitKcalPerDay;
  const protein = view.request.diet?.proteinGPerKg;
  const notes: Note[] = [];
  const falls = fallsInDeficit.includes(key) && result.position === 'low';
  const rises = risesInDeficit.includes(key) && result.position === 'high';
  if ((falls || rises) && (deficit === undefined || deficit > 0)) {
    const known =
      deficit === undefined ? 'An energy deficit' : `The deficit of ${Math.round(deficit)} kcal a day`;
    notes.push({
      code: 'health/energy-deficit',
      words: `${known} ${falls ? 'lowers' : 'raises'} it; it comes back with food. That explains it, it does not make it harmless.`,
      source: 'preparation-cases',
    });
  }
  if (key === 'bun' && result.position === 'high') {
    const eaten = protein === undefined ? 'Much protein' : `Protein of ${protein} g per kg body mass`;
    notes.push({
      code: 'health/protein-raises-urea',
      words: `${eaten} and a dry body raise it.`,
      source: 'lugaresi-2013',
    });
  }
  if (key === 'phosphate' && result.position === 'low') {
    notes.push({
      code: 'health/refeeding',
      words:
        'It falls when much food comes back after a long deficit: show it to a physician before eating up.',
      source: 'critical-memory',
    });
  }
  return notes;
}
