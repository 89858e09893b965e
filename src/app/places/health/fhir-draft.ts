import * as v from 'valibot';
import { alreadyKept } from '#core/health/fhir/draft-to-panel.ts';
import { readFhir, type DraftPanel } from '#core/health/fhir/read-fhir.ts';
import { factsOfFhir } from '#core/health/fhir/fhir-of-journal.ts';
import { panelsIn } from '#core/health/panel/panel-from-journal.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { answered, type Outcome } from '#core/problems/problem.ts';
import { parseClock } from '#core/units/clock.ts';
import { panelDraft, readLine, type PanelDraft, type ValueDraft } from './panel-draft.ts';

const problem = v.strictObject({ path: v.string(), message: v.string(), remedy: v.string() });

/** What a FHIR file holds, kept while the person looks it over and fills in what it lacks. */
export const fhirDraft = v.strictObject({
  file: v.string(),
  panels: v.array(v.strictObject({ ...panelDraft.entries, report: v.string() })),
  weights: v.array(
    v.strictObject({ day: v.string(), atMinutes: v.optional(v.number()), massKg: v.number() }),
  ),
  withWeights: v.boolean(),
  /** Panels and weights that the journal has already. */
  known: v.number(),
  problems: v.array(problem),
});
export type FhirDraft = v.InferOutput<typeof fhirDraft>;

export const noFile: FhirDraft = {
  file: '',
  panels: [],
  weights: [],
  withWeights: true,
  known: 0,
  problems: [],
};

/** A missing unit is asked on the screen, line by line; other problems of the file are shown. */
const ASKED_HERE = 'health/fhir-no-unit';

/** Reads a file against a journal; a file that is no FHIR, or of several people, is refused. */
export function draftOfFhir(text: string, file: string, ledger: Ledger): Outcome<FhirDraft> {
  const reading = readFhir(text);
  if (!reading.ok) return reading;
  const facts = factsOfFhir(text, ledger);
  if (!facts.ok) return facts;
  const kept = panelsIn(ledger);
  return answered({
    file,
    panels: reading.value.panels.filter((panel) => !alreadyKept(panel, kept)).map(draftOfPanel),
    weights: facts.value.facts.flatMap((fact) => {
      if (fact.kind !== 'body-weighed') return [];
      const at = fact.clock === undefined ? undefined : parseClock(fact.clock);
      return [{ day: fact.day, ...(at === undefined ? {} : { atMinutes: at }), massKg: fact.data.massKg }];
    }),
    withWeights: true,
    known: facts.value.known,
    problems: reading.value.problems
      .filter(({ code }) => code !== ASKED_HERE)
      .map(({ path, message, remedy }) => ({ path, message, remedy })),
  });
}

function draftOfPanel({ drawn, laboratory, report, values }: DraftPanel): FhirDraft['panels'][number] {
  const at = drawn.time === undefined ? undefined : parseClock(drawn.time);
  return {
    laboratory: laboratory ?? '',
    date: drawn.date,
    ...(at === undefined ? {} : { atMinutes: at }),
    haemolysed: false,
    report: report ?? '',
    values: values.map(
      ({ loinc, name, value, comparator, unit, interval }): ValueDraft => ({
        ...(loinc === undefined ? {} : { loinc }),
        name: name ?? loinc ?? '',
        text: `${comparator ?? ''}${value}`,
        unit: unit ?? '',
        ...(interval?.low === undefined ? {} : { low: interval.low }),
        ...(interval?.high === undefined ? {} : { high: interval.high }),
        unitConfirmed: false,
      }),
    ),
  };
}

/** Lines that are asked about: without a unit, or odd in theirs. They keep their place while they are being mended. */
export function linesToAsk(panel: PanelDraft, sex: 'female' | 'male'): readonly number[] {
  return panel.values.flatMap((line, place) => (readLine(line, place, sex).ok ? [] : [place]));
}
