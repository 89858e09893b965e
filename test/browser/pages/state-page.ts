import * as v from 'valibot';
import { momentOf, nowClock, offsetMinutesAt, today } from '../../../src/app/state/clock.ts';
import {
  exportAs,
  importFile,
  importText,
  journalText,
  previewImport,
} from '../../../src/app/state/copies.ts';
import { clearDraft, draft } from '../../../src/app/state/drafts.ts';
import { chosen, openWhich, phase, restartDemo, start, which } from '../../../src/app/state/journals.ts';
import * as journal from '../../../src/app/state/open-journal.ts';
import { keepPhoto, photo } from '../../../src/app/state/photos.ts';
import { manyEntries } from '../../contract/many-entries.ts';

const DEMO_NOW = Date.parse('2027-05-04T14:10:00+01:00');

const typed = v.strictObject({ massKg: v.string(), note: v.string() });
const form = () => draft('body/weigh', typed, { massKg: '', note: '' });

/** What the tests call from outside the page. */
const statePage = {
  async start(withDemo: boolean): Promise<void> {
    const demo = () => Promise.resolve({ entries: manyEntries(30, 'demo'), nowMs: DEMO_NOW });
    await start(withDemo ? { demo } : {});
  },
  openWhich,
  restartDemo,
  weigh: (massKg: number, options = {}) => journal.record('body-weighed', { massKg }, options),
  recordAll: journal.recordAll,
  correct: journal.correct,
  remove: journal.remove,
  undo: journal.undo,
  retrySaving: journal.retrySaving,
  importText,
  previewImport,
  journalText,
  exportAs,
  importBytes: (name: string, bytes: readonly number[]) =>
    importFile(new File([new Uint8Array(bytes)], name)),
  look: () => ({
    phase: phase.value,
    which: which.value,
    chosen: chosen.value,
    today: today.value,
    nowClock: nowClock.value,
    saving: journal.saving.value,
    undoable: journal.undoable.value?.says,
    revision: journal.ledger.value.revision,
    masses: journal.ledger.value.of('body-weighed').map((fact) => fact.data.massKg),
    facts: journal.ledger.value
      .of('body-weighed')
      .map(({ day, minutes, entry }) => ({ day, minutes, id: entry.id })),
    size: journal.ledger.value.size,
  }),
  typed: () => form().value,
  type(massKg: string) {
    form().value = { ...form().value, massKg };
  },
  clearTyped: () => clearDraft('body/weigh'),
  async photograph(): Promise<string | undefined> {
    const kept = await keepPhoto(new Blob(['front']));
    return kept.ok ? (await photo(kept.value))?.text() : kept.problem.message;
  },
  /** The local text of each half hour of a day, found again from its clock time. */
  moments(day: string): string[] {
    return Array.from({ length: 48 }, (_, i) => {
      const ms = momentOf(day, i * 30);
      return `${new Date(ms + offsetMinutesAt(ms) * 60_000).toISOString().slice(0, 16)}`;
    });
  },
};
export type StatePage = typeof statePage;

Reflect.set(globalThis, 'statePage', statePage);
