import {
  BIOTIN_HARMLESS_MG_PER_DAY,
  BIOTIN_PAUSE_HOURS,
  biotinBends,
  labEffects,
} from '#core/tables/lab-effects.ts';
import type { PanelView, Taken } from './panel-view.ts';
import type { Note, PanelResult } from './reading.ts';

/** Biotin taken in an amount, and so lately, that it may bend an assay; undefined where it is not taken. */
export function disturbingBiotin(view: PanelView): Taken | undefined {
  const biotin = view.takes('biotin');
  if (!biotin) return undefined;
  const harmless = biotin.mgPerDay !== undefined && biotin.mgPerDay < BIOTIN_HARMLESS_MG_PER_DAY;
  return harmless ? undefined : biotin;
}

/** Notes of what was being taken on one result: biotin by the assay's design, others by what they do. */
export function notesOfTaken(view: PanelView, result: PanelResult): Note[] {
  const key = result.read.known?.analyte.key;
  if (key === undefined) return [];
  return [...biotinNote(view, key), ...effectNotes(view, result, key)];
}

function biotinNote(view: PanelView, key: string): Note[] {
  const biotin = disturbingBiotin(view);
  const bends = biotinBends[key];
  if (!biotin || bends === undefined) return [];
  const pause =
    biotin.hoursSinceLast === undefined
      ? ''
      : biotin.hoursSinceLast >= BIOTIN_PAUSE_HOURS
        ? ` The last dose was ${biotin.hoursSinceLast} h before, which is usually enough; no time is guaranteed.`
        : ` The last dose was ${biotin.hoursSinceLast} h before, less than the ${BIOTIN_PAUSE_HOURS} h commonly advised.`;
  return [
    {
      code: 'health/biotin',
      words: `Biotin can make it read falsely ${bends} where the laboratory's assay uses biotin.${pause}`,
      source: 'biotin-assays',
    },
  ];
}

function effectNotes(view: PanelView, result: PanelResult, key: string): Note[] {
  const said = new Map<string, Note>();
  for (const effect of labEffects) {
    if (effect.analyte !== key || !view.takes(effect.substance)) continue;
    const fits = effect.moves === 'up' ? result.position !== 'low' : result.position !== 'high';
    if (fits)
      said.set(effect.words, { code: 'health/taken-moves', words: effect.words, source: effect.source });
  }
  return [...said.values()];
}
