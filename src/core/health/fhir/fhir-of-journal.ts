import type { Ledger } from '#core/journal/ledger.ts';
import { answered, type Outcome, type Problem } from '#core/problems/problem.ts';
import { roundTo } from '#core/units/rounding.ts';
import { takingBefore } from '../panel/panel-from-journal.ts';
import { bodyMeasurements } from './body-observations.ts';
import { alreadyKept, panelOfDraft, type DrawnPanel } from './draft-to-panel.ts';
import type { FhirBundle } from './fhir-shapes.ts';
import { nameUuid } from './name-uuid.ts';
import { readFhir } from './read-fhir.ts';
import { writeFhir } from './write-fhir.ts';

/**
 * Panels and body measurements of a journal as a FHIR bundle. A draw's time is written with the offset of the entry that
 * holds it: its local clock is kept, even if the clocks changed between drawing and entering.
 */
export function fhirOfJournal(ledger: Ledger): FhirBundle {
  const athlete = ledger.latest('athlete-described')?.data;
  const newest = new Map(ledger.of('blood-drawn').map((fact) => [fact.data.panel, fact]));
  return writeFhir({
    athlete: athlete === undefined ? {} : { sex: athlete.sex, birthYear: athlete.birthYear },
    panels: [...newest.values()].map(({ data, entry }) => ({ data, offset: offsetOf(entry.at) })),
    body: bodyMeasurements(ledger),
  });
}

function offsetOf(at: string): string {
  return at.endsWith('Z') ? 'Z' : at.slice(-6);
}

/** A fact for the journal, still without id, stamp and device; `clock` is the local time where the file has one. */
export type FhirFact =
  | { readonly kind: 'blood-drawn'; readonly day: string; readonly clock?: string; readonly data: DrawnPanel }
  | {
      readonly kind: 'body-weighed';
      readonly day: string;
      readonly clock?: string;
      readonly data: { readonly massKg: number };
    };

export interface FhirImport {
  readonly facts: readonly FhirFact[];
  /** Panels and weights of the file that the journal has already. */
  readonly known: number;
  readonly problems: readonly Problem[];
}

const SCALE_KG = { least: 25, most: 350 } as const;

/** What a FHIR file adds to a journal. Values without unit are left out and named; nothing is taken twice. */
export function factsOfFhir(text: string, ledger: Ledger): Outcome<FhirImport> {
  const reading = readFhir(text);
  if (!reading.ok) return reading;
  const { panels, weights, problems } = reading.value;
  const kept = ledger.of('blood-drawn').map(({ data }) => data);
  const facts: FhirFact[] = [];
  let known = 0;
  for (const draft of panels) {
    if (alreadyKept(draft, kept)) {
      known += 1;
      continue;
    }
    const { date, time } = draft.drawn;
    const name = nameUuid(`panel ${date} ${time ?? ''} ${draft.report ?? ''}`);
    const { data } = panelOfDraft(draft, name, takingBefore(ledger, draft.drawn));
    if (data)
      facts.push({ kind: 'blood-drawn', day: date, ...(time === undefined ? {} : { clock: time }), data });
  }
  const weighed = new Set(
    ledger.of('body-weighed').map(({ day, data }) => `${day} ${roundTo(data.massKg, 2)}`),
  );
  for (const { drawn, massKg } of weights) {
    const mass = roundTo(massKg, 2);
    if (mass < SCALE_KG.least || mass > SCALE_KG.most) continue;
    if (weighed.has(`${drawn.date} ${mass}`)) known += 1;
    else {
      const clock = drawn.time === undefined ? {} : { clock: drawn.time };
      facts.push({ kind: 'body-weighed', day: drawn.date, ...clock, data: { massKg: mass } });
    }
  }
  return answered({ facts, known, problems });
}
