import { describe, expect, it } from 'vitest';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { createLedger } from './ledger.ts';
import { lentEntries, loansOf, type Loan } from './lent-entries.ts';

const loan: Loan = { loan: 'l1', to: 'Coach', parts: ['body'], until: '2027-04-01' };
let count = 0;
const entry = (kind: string, day: string, more: object = {}) => {
  count += 1;
  return oneEntry({ id: `${kind} ${count}`, stamp: `s${1000 + count}`, kind, day, data: {}, ...more });
};
const ids = (entries: readonly { readonly id: string }[]) => entries.map(({ id }) => id);

describe('what is lent', () => {
  const weighed = entry('body-weighed', '2027-03-01');
  const corrected = entry('body-weighed', '2027-02-20', { replaces: weighed.id });
  const early = entry('body-weighed', '2027-02-10');
  const gone = entry('body-weighed', '2027-03-02');
  const removal = entry('entry-removed', '2027-03-03', { replaces: gone.id });
  const blood = entry('blood-drawn', '2027-03-04');
  const bloodGone = entry('entry-removed', '2027-03-05', { replaces: blood.id });
  const who = entry('athlete-described', '2026-11-01');
  const note = entry('note-written', '2027-03-04');
  const photo = entry('photo-taken', '2027-03-04');
  const later = entry('from-a-later-version', '2027-03-04');
  const mine = entry('copy-lent', '2027-03-04', { data: loan });
  const other = entry('copy-lent', '2027-03-04', { data: { ...loan, loan: 'l2', to: 'Physician' } });
  const ledger = createLedger([
    weighed,
    corrected,
    early,
    gone,
    removal,
    blood,
    bloodGone,
    who,
    note,
    photo,
    later,
    mine,
    other,
  ]);

  it('[SYN-40] is the chosen parts with corrections and removals, who it is, and the loan itself', () => {
    expect(ids(lentEntries(ledger, loan))).toEqual(
      ids([weighed, corrected, early, gone, removal, who, mine]),
    );
  });

  it('[SYN-40] notes, photographs, other loans and kinds that are not known stay at home whatever is chosen', () => {
    const all: Loan = { ...loan, parts: ['body', 'food', 'training', 'course', 'health'] };
    const lent = new Set(ids(lentEntries(ledger, all)));
    for (const stays of [note, photo, later, other]) expect(lent.has(stays.id)).toBe(false);
    for (const goes of [blood, bloodGone, weighed]) expect(lent.has(goes.id)).toBe(true);
  });

  it('[SYN-40] from a day on: what was done before stays, what stands goes, and a fact goes with all its versions', () => {
    const since: Loan = { ...loan, parts: ['body', 'course'], since: '2027-03-01' };
    const shown = entry('show-set', '2026-11-01');
    const joined = createLedger([...ledger.entries(), shown]);
    expect(ids(lentEntries(joined, since))).toEqual(
      ids([weighed, corrected, gone, removal, who, mine, shown]),
    );
  });

  it('[SYN-40] of each loan the last word counts', () => {
    const back = entry('copy-lent', '2027-03-06', { data: { ...loan, takenBack: true }, stamp: 's9999' });
    const open = createLedger([...ledger.entries(), back]);
    expect(loansOf(open).map(({ loan: id, takenBack }) => [id, takenBack])).toEqual([
      ['l1', true],
      ['l2', undefined],
    ]);
  });
});
