import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { backupCommand } from '../../src/cli/backup.ts';
import { openSealedFolder } from '../../src/outside/sealed-store/open-sealed-folder.ts';
import { restoreSealedFolder } from '../../src/outside/sealed-store/restore-sealed-folder.ts';
import { openSqliteStore } from '../../src/outside/sealed-store/sqlite-sealed-store.ts';
import { FILE_FAULTS, sweepSteps, withFileFault } from './faulty-files.ts';

const entry = (id: string) => ({ id, stamp: `s${id}`, body: 'A'.repeat(1200) });
const named = (name: string, count: number) => Array.from({ length: count }, (_, i) => entry(`${name}${i}`));
const idsOf = (entries: readonly { readonly id: string }[]) => entries.map(({ id }) => id);
const OLD = named('old', 12);
const NEW = named('new', 9);

// A folder in memory where there is one: what is flushed makes no difference to a process that is killed.
const PLACE = existsSync('/dev/shm') ? '/dev/shm' : tmpdir();

let root = '';
beforeAll(async () => {
  root = mkdtempSync(join(PLACE, 'steps-'));
  for (const [name, entries] of [
    ['old', OLD],
    ['new', NEW],
  ] as const) {
    const store = openSqliteStore(join(root, name));
    await store.enter('one', 'digest');
    await store.append('one', entries);
    await store.close();
  }
  await leaveUnderWay();
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** A folder with the old journals in it, anew. */
function freshFolder(from = 'old'): string {
  const folder = join(root, 'data');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder);
  for (const ending of ['', '-journal'])
    if (existsSync(join(root, `${from}${ending}`)))
      copyFileSync(join(root, `${from}${ending}`), join(folder, `sealed.sqlite${ending}`));
  return folder;
}

/** The old journals as a process leaves them that is killed while it writes into their file. */
async function leaveUnderWay(): Promise<void> {
  const folder = join(root, 'data');
  const whole = readFileSync(join(root, 'old'));
  await sweepSteps(async (at) => {
    freshFolder();
    const store = openSqliteStore(join(folder, 'sealed.sqlite'));
    await withFileFault(at, 'is killed half-way', () => store.append('one', named('lost', 12)));
    return readFileSync(join(folder, 'sealed.sqlite')).equals(whole);
  });
  copyFileSync(join(folder, 'sealed.sqlite'), join(root, 'under way'));
  copyFileSync(join(folder, 'sealed.sqlite-journal'), join(root, 'under way-journal'));
}

/** What the next start finds: it must find something whole. */
async function atNextStart(folder: string): Promise<readonly string[]> {
  const store = await openSealedFolder(folder);
  if (!store.ok) throw new Error(store.problem.message);
  const ids = await store.value.ids('one');
  await store.value.close();
  return ids;
}

describe.each(FILE_FAULTS)('the server’s files where whoever writes %s at a step', (fault) => {
  const goesOn = fault.startsWith('fails');

  it('[SYN-34] entries are kept all or none at every step, and what was acknowledged is there', async () => {
    const news = named('news', 5);
    const seen = new Set<number>();
    const faults = await sweepSteps(async (at) => {
      const folder = freshFolder();
      const store = await openSealedFolder(folder);
      if (!store.ok) throw new Error(store.problem.message);
      const { answer, happened } = await withFileFault(at, fault, () => store.value.append('one', news));
      // One that lives goes on after its disk failed.
      if (goesOn) {
        await store.value.append('two', [entry('after')]);
        expect(await store.value.ids('two')).toEqual(['after']);
        await store.value.close();
      }
      const ids = await atNextStart(folder);
      const kept = ids.length > OLD.length;
      expect([at, ids]).toEqual([at, idsOf(kept ? [...OLD, ...news] : OLD)]);
      if (answer !== undefined) expect([at, kept]).toEqual([at, true]);
      else if (goesOn) expect([at, kept]).toEqual([at, false]);
      seen.add(ids.length);
      return happened;
    });
    expect(faults).toBeGreaterThan(15);
    expect(seen.size).toBe(2);
  });

  it.each(['old', 'under way'])(
    '[SYN-35] a restore over a file that is %s leaves the old journals or the new at every step, and clears what it left at the next start',
    async (from) => {
      const seen = new Set<string>();
      const faults = await sweepSteps(async (at) => {
        const folder = freshFolder(from);
        const { answer, happened } = await withFileFault(at, fault, () =>
          restoreSealedFolder(join(root, 'new'), folder),
        );
        const ids = await atNextStart(folder);
        const which = ids.length === OLD.length ? 'old' : 'new';
        expect([at, ids]).toEqual([at, idsOf(which === 'old' ? OLD : NEW)]);
        if (answer) expect([at, which]).toEqual([at, answer.ok ? 'new' : 'old']);
        if (goesOn) expect([at, answer === undefined]).toEqual([at, false]);
        seen.add(which);
        const left = readdirSync(folder).filter((name) => name !== 'sealed.sqlite');
        expect([at, left.filter((name) => !/^sealed\.sqlite\.before(-journal)?$/.test(name))]).toEqual([
          at,
          [],
        ]);
        // The file before is never half there.
        if (left.includes('sealed.sqlite.before')) {
          const before = openSqliteStore(join(folder, 'sealed.sqlite.before'));
          expect(await before.ids('one')).toEqual(idsOf(OLD));
          await before.close();
        }
        return happened;
      });
      expect(faults).toBeGreaterThan(10);
      expect([...seen].sort()).toEqual(['new', 'old']);
    },
  );

  it('[SYN-35] a start that breaks off at any step is followed by one that finds everything', async () => {
    const faults = await sweepSteps(async (at) => {
      const folder = freshFolder('under way');
      const { answer, happened } = await withFileFault(at, fault, () => openSealedFolder(folder));
      // A number half written would be another process, which may live.
      const owner = join(folder, 'sealed.owner');
      if (existsSync(owner)) expect([at, readFileSync(owner, 'utf8')]).toEqual([at, String(process.pid)]);
      if (answer?.ok && goesOn) await answer.value.close();
      expect([at, await atNextStart(folder)]).toEqual([at, idsOf(OLD)]);
      return happened;
    });
    expect(faults).toBeGreaterThan(8);
  });

  it('[SYN-35] a backup is there whole or not at all at every step, and the next one is made all the same', async () => {
    const folder = freshFolder();
    const file = join(root, 'backup');
    vi.spyOn(process.stdout, 'write').mockReturnValue(true);
    vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    const faults = await sweepSteps(async (at) => {
      rmSync(file, { force: true });
      const { answer, happened } = await withFileFault(at, fault, () => backupCommand.run([folder, file]));
      if (answer === 0) expect([at, existsSync(file)]).toEqual([at, true]);
      if (!existsSync(file)) expect([at, await backupCommand.run([folder, file])]).toEqual([at, 0]);
      const copy = openSqliteStore(file);
      expect([at, copy.check(), await copy.ids('one')]).toEqual([at, [], idsOf(OLD)]);
      await copy.close();
      expect([at, readdirSync(root).filter((name) => name.startsWith('backup.'))]).toEqual([at, []]);
      return happened;
    });
    vi.restoreAllMocks();
    expect(await atNextStart(folder)).toEqual(idsOf(OLD));
    expect(faults).toBeGreaterThan(8);
  });
});
