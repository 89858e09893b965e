import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { canonicalLine } from '#core/journal/canonical-line.ts';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { journalKeys } from '../seal/journal-keys.ts';
import { openEntry, sealEntry } from '../seal/seal-entry.ts';
import { openSealedFolder } from './open-sealed-folder.ts';
import { restoreSealedFolder } from './restore-sealed-folder.ts';

const keys = journalKeys(new Uint8Array(32).fill(9));
const entries = Array.from({ length: 60 }, (_, i) => oneEntry({ id: `e${i}`, stamp: `s${100 + i}` }));
const written = new Map(entries.map((entry) => [entry.id, canonicalLine(entry)]));
const PAGE_BYTES = 4096;

let here = '';
let whole: Buffer;
const file = () => join(here, 'sealed.sqlite');

beforeAll(async () => {
  here = mkdtempSync(join(tmpdir(), 'damage-'));
  const store = await openSealedFolder(here);
  if (!store.ok) throw new Error(store.problem.message);
  await store.value.enter(keys.journal, 'digest');
  await store.value.append(
    keys.journal,
    entries.map((entry) => sealEntry(keys, entry)),
  );
  await store.value.close();
  whole = readFileSync(file());
});
afterAll(() => rmSync(here, { recursive: true, force: true }));

/** What becomes of a damaged file: refused at the start, or so many entries that open and so many that do not. */
async function after(
  bytes: Buffer,
): Promise<'refused' | { readonly opened: number; readonly forged: number }> {
  writeFileSync(file(), bytes);
  const store = await openSealedFolder(here);
  if (!store.ok) {
    expect(store.problem.code).toBe('server/data-damaged');
    return 'refused';
  }
  const outcomes = (await store.value.after(keys.journal, 0, 1000)).map((sealed) => openEntry(keys, sealed));
  await store.value.close();
  const opened = outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
  for (const entry of opened) expect(canonicalLine(entry)).toBe(written.get(entry.id));
  return { opened: opened.length, forged: outcomes.length - opened.length };
}

describe('a damaged file of sealed journals', () => {
  it('[SYN-21] every class of byte on every page: refused by name, or nothing changed passes for an entry', {
    timeout: 60_000,
  }, async () => {
    const counts = { refused: 0, forged: 0, unharmed: 0 };
    // SQLite's file format, sections 1.3 and 1.6: file header, page header, cell pointers, free space, cells.
    const head = [0, 16, 18, 20, 24, 28, 32, 44, 52, 56, 60, 96];
    const onPage = [0, 1, 3, 5, 7, 8, 10, 200, 2000, 3000, 3900, 4090];
    const places = new Set(head);
    for (let page = 0; page < whole.length; page += PAGE_BYTES)
      for (const at of onPage) places.add(page + at + (page === 0 ? 100 : 0));
    for (const at of places) {
      if (at >= whole.length) continue;
      const bytes = Buffer.from(whole);
      bytes.writeUInt8(bytes.readUInt8(at) ^ 0x55, at);
      const outcome = await after(bytes);
      if (outcome === 'refused') counts.refused += 1;
      else if (outcome.forged > 0) counts.forged += 1;
      else if (outcome.opened === entries.length) counts.unharmed += 1;
    }
    expect(counts.refused).toBeGreaterThan(10);
    expect(counts.forged).toBeGreaterThan(3);
    expect(counts.unharmed).toBeGreaterThan(0);
  });

  it('[SYN-21] cut anywhere: refused by name, never read as a shorter journal', async () => {
    let refused = 0;
    for (let length = whole.length - 1; length > 0; length -= 1777) {
      const outcome = await after(whole.subarray(0, length));
      // The last page is empty behind its head: SQLite reads what is missing there as the nought that it was.
      if (outcome === 'refused') refused += 1;
      else expect([length, outcome]).toEqual([length, { opened: entries.length, forged: 0 }]);
    }
    expect(refused).toBeGreaterThan(15);
    expect(await after(whole)).toEqual({ opened: entries.length, forged: 0 });
  });

  it('[SYN-17] a restore of what is no whole backup, or under a running server, changes nothing', async () => {
    writeFileSync(file(), whole);
    const backup = join(here, 'backup');
    for (const bad of [Buffer.alloc(0), Buffer.from('no database'), whole.subarray(0, whole.length - 5000)]) {
      writeFileSync(backup, bad);
      expect(await restoreSealedFolder(backup, here)).toMatchObject({
        problem: { code: 'server/no-backup' },
      });
      expect(readFileSync(file()).equals(whole)).toBe(true);
      expect(readFileSync(backup).equals(bad)).toBe(true);
    }
    copyFileSync(file(), backup);
    writeFileSync(join(here, 'sealed.owner'), '1');
    expect(await restoreSealedFolder(backup, here)).toMatchObject({
      problem: { code: 'server/data-in-use' },
    });
    rmSync(join(here, 'sealed.owner'));
    expect(existsSync(`${file()}.before`)).toBe(false);
  });

  it('[SYN-17] a restore takes the place of a damaged file, and what that had under way is not undone in it', async () => {
    const backup = join(here, 'backup');
    writeFileSync(backup, whole);
    writeFileSync(file(), whole.subarray(0, 9000));
    writeFileSync(`${file()}-journal`, Buffer.from('what was under way'));
    expect(await restoreSealedFolder(backup, here)).toEqual({ ok: true, value: { journals: 1 } });
    expect(readFileSync(`${file()}.before`)).toHaveLength(9000);
    expect(await after(readFileSync(file()))).toEqual({ opened: entries.length, forged: 0 });
  });
});
