import * as v from 'valibot';
import { alreadyKept } from '#core/health/fhir/draft-to-panel.ts';
import { readFhir, type DraftPanel } from '#core/health/fhir/read-fhir.ts';
import { factsOfFhir } from '#core/health/fhir/fhir-of-journal.ts';
import { panelsIn } from '#core/health/panel/panel-from-journal.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { answered, type Outcome } from '#core/problems/problem.ts';
import { parseClock } from '#core/units/clock.ts';
import { panelDraft, readLine, type ValueDraft } from './panel-draft.ts';

type Sex = 'female' | 'male';

const problem = v.strictObject({ path: v.string(), message: v.string(), remedy: v.string() });

/** What a FHIR file holds, kept while the person looks it over and fills in what it lacks. */
export const fhirDraft = v.strictObject({
  file: v.string(),
  /** `asked`: places of the lines that could not be read as the file has them; they stay open to be mended. */
  panels: v.array(v.strictObject({ ...panelDraft.entries, report: v.string(), asked: v.array(v.number()) })),
  weights: v.array(
    v.strictObject({ day: v.string(), atMinutes: v.optional(v.number()), massKg: v.number() }),
  ),
  withWeights: v.boolean(),
  /** Panels and weights that the journal has already. */
  known: v.number(),
  problems: v.array(problem),
});
export type FhirDraft = v.InferOutput<typeof fhirDraft>;

export type FoundPanel = FhirDraft['panels'][number];

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
export function draftOfFhir(text: string, file: string, ledger: Ledger, sex: Sex): Outcome<FhirDraft> {
  const reading = readFhir(text);
  if (!reading.ok) return reading;
  const facts = factsOfFhir(text, ledger);
  if (!facts.ok) return facts;
  const kept = panelsIn(ledger);
  return answered({
    file,
    panels: reading.value.panels
      .filter((panel) => !alreadyKept(panel, kept))
      .map((panel) => draftOfPanel(panel, sex)),
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

function draftOfPanel({ drawn, laboratory, report, values }: DraftPanel, sex: Sex): FoundPanel {
  const at = drawn.time === undefined ? undefined : parseClock(drawn.time);
  const lines = values.map(
    ({ loinc, name, value, comparator, unit, interval }): ValueDraft => ({
      ...(loinc === undefined ? {} : { loinc }),
      name: name ?? loinc ?? '',
      text: `${comparator ?? ''}${value}`,
      unit: unit ?? '',
      ...(interval?.low === undefined ? {} : { low: interval.low }),
      ...(interval?.high === undefined ? {} : { high: interval.high }),
      unitConfirmed: false,
    }),
  );
  return {
    laboratory: laboratory ?? '',
    date: drawn.date,
    ...(at === undefined ? {} : { atMinutes: at }),
    haemolysed: false,
    report: report ?? '',
    values: lines,
    asked: lines.flatMap((line, place) => (readLine(line, place, sex).ok ? [] : [place])),
  };
}

/** The panel without one of its lines. */
export function withoutLine(panel: FoundPanel, gone: number): FoundPanel {
  return {
    ...panel,
    values: panel.values.filter((_, place) => place !== gone),
    asked: panel.asked.flatMap((place) => (place === gone ? [] : place > gone ? [place - 1] : [place])),
  };
}
