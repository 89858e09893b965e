import { describe, expect, it } from 'vitest';
import { createLedger, type GrowingLedger } from '#core/journal/ledger.ts';
import type { Loan } from '#core/journal/lent-entries.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { createServer } from '../../server/create-server.ts';
import { lenderKeys, loanKeys, loanSecret } from '../seal/loan-keys.ts';
import { openSqliteStore } from '../sealed-store/sqlite-sealed-store.ts';
import { bringLoan, endLoan, readLoan, START } from './lend.ts';
import { type Ask, noMark, type SyncMark } from './synchronize.ts';

const secret = new Uint8Array(32).fill(4);
const loan: Loan = { loan: 'l1', to: 'Coach', parts: ['body'], until: '2027-04-01' };
const reader = loanKeys(loanSecret(secret, loan.loan));
const keys = lenderKeys(secret, loan.loan);
const UNTIL_MS = 1_000_000;

function serving() {
  let [clock, now] = [0, 0];
  const store = openSqliteStore(':memory:');
  const app = createServer({
    files: new Map(),
    sync: { store, clockMs: () => (clock += 10_000), nowMs: () => now },
  });
  const askAs =
    (access: string): Ask =>
    async (path, body) => {
      const answer = await app.request(`/sync/${path}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', authorization: `Bearer ${access}` },
        body: JSON.stringify(body),
      });
      return { status: answer.status, body: await answer.json() };
    };
  return { lender: askAs(keys.access), reads: askAs(reader.access), to: (ms: number) => (now = ms) };
}

const weighed = (device: string, n: number) =>
  oneEntry({ id: `${device}-${n}`, stamp: `2027-${1000 + n}-${device}`, device });
const journal = (device: string, count: number): GrowingLedger =>
  createLedger(Array.from({ length: count }, (_, n) => weighed(device, n)));

function bring(ask: Ask, ledger: GrowingLedger, device: string, mark: SyncMark = noMark) {
  return bringLoan({ keys, reader, ask, device, ledger, loan, untilMs: UNTIL_MS }, mark);
}

describe('a copy that is lent', () => {
  it('[SYN-24] holds the chosen parts to the byte, follows the journal, and says nothing twice', async () => {
    const { lender, reads } = serving();
    const ledger = journal('one', 2500);
    const chosen = writeJournal(ledger.entries());
    ledger.add([oneEntry({ id: 'blood', stamp: '2027-2', kind: 'blood-drawn' })]);
    const first = await bring(lender, ledger, 'one');
    expect(first).toMatchObject({ ok: true, value: { sent: 2500 } });
    const copy = await readLoan(reader, reads, START);
    if (!copy.ok || !first.ok) throw new Error('not lent');
    expect(copy.value.problems).toEqual([]);
    expect(writeJournal(copy.value.entries)).toBe(chosen);
    ledger.add([weighed('one', 2600)]);
    expect(await bring(lender, ledger, 'one', first.value.mark)).toMatchObject({ value: { sent: 1 } });
    const news = await readLoan(reader, reads, copy.value.place, copy.value.entries);
    expect(news).toMatchObject({ value: { entries: [{ id: 'one-2600' }], problems: [] } });
  });

  it('[SYN-24] is filled by any device of the journal, and the reader misses nothing of either', async () => {
    const { lender, reads } = serving();
    const both = createLedger([...journal('one', 5).entries(), ...journal('two', 5).entries()]);
    await bring(lender, journal('one', 5), 'one');
    await bring(lender, both, 'two');
    const copy = await readLoan(reader, reads, START);
    expect(copy).toMatchObject({ value: { problems: [] } });
    expect(copy.ok && createLedger(copy.value.entries).size).toBe(10);
  });

  it('[SYN-24] a server that keeps something of it back, or changes it, is found out by the reader', async () => {
    const { lender, reads } = serving();
    await bring(lender, journal('one', 5), 'one');
    const cheating =
      (change: (entries: { body: string }[]) => object[]): Ask =>
      async (path, body) => {
        const answer = await reads(path, body);
        const whole = answer.body as { entries: { body: string }[] };
        return { ...answer, body: { ...whole, entries: change(whole.entries) } };
      };
    const short = await readLoan(
      reader,
      cheating((entries) => entries.slice(1)),
      START,
    );
    expect(short).toMatchObject({ value: { problems: [{ code: 'sync/missing' }] } });
    const forged = await readLoan(
      reader,
      cheating(([first, ...rest]) => [{ ...first, body: rest[0]?.body ?? '' }, ...rest]),
      START,
    );
    expect(forged.ok && forged.value.problems.map(({ code }) => code)).toEqual([
      'sync/forged',
      'sync/missing',
    ]);
  });

  it('[SYN-24] is over at its moment, and when it is taken back, which twice does no harm', async () => {
    const { lender, reads, to } = serving();
    await bring(lender, journal('one', 3), 'one');
    to(UNTIL_MS);
    expect(await readLoan(reader, reads, START)).toMatchObject({ problem: { code: 'lent/over' } });
    to(0);
    expect(await readLoan(reader, reads, START)).toMatchObject({ ok: true });
    for (const _ of [1, 2]) expect(await endLoan(keys, lender)).toMatchObject({ ok: true });
    expect(await readLoan(reader, reads, START)).toMatchObject({ problem: { code: 'lent/over' } });
    expect(await bring(lender, journal('one', 3), 'one')).toMatchObject({
      problem: { code: 'sync/not-let-in' },
    });
  });

  it('[SYN-24] no connection is said as such, to the lender and to the reader', async () => {
    const away: Ask = () => Promise.reject(new Error('away'));
    expect(await bring(away, journal('one', 1), 'one')).toMatchObject({
      problem: { code: 'sync/not-reached' },
    });
    expect(await readLoan(reader, away, START)).toMatchObject({ problem: { code: 'sync/not-reached' } });
    expect(await endLoan(keys, away)).toMatchObject({ problem: { code: 'sync/not-reached' } });
  });
});
