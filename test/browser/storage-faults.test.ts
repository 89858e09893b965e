import type { BrowserContext, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { canonicalLine } from '#core/journal/canonical-line.ts';
import { manyEntries } from '../contract/many-entries.ts';
import { buildPage } from './build-page.ts';
import { useBrowser } from './harness.ts';
import type { FaultPage } from './pages/fault-page.ts';

let folder = '';
beforeAll(async () => {
  folder = await buildPage('fault-page.ts');
});
const bench = useBrowser(() => folder);

/** More than one run of the store, so that an import has a middle. */
const MANY = 1100;
const fileOf = (name: string): string => manyEntries(MANY, `file-${name}-`).map(canonicalLine).join('\n');

function call<Name extends keyof FaultPage>(
  page: Page,
  name: Name,
  ...args: Parameters<FaultPage[Name]>
): Promise<Awaited<ReturnType<FaultPage[Name]>>> {
  return page.evaluate(([door, given]) => Reflect.get(globalThis, 'faultPage')[door](...given), [
    name,
    args,
  ] as const);
}

/** A device with an empty journal; what each write is answered, and when the page stands still. */
async function begin(known?: BrowserContext) {
  const { page, device } = await bench.open({ journal: 'own', ...(known && { device: known }) });
  const answers: string[] = [];
  await page.exposeFunction('answered', (i: number, status: string) => void (answers[i] = status));
  const down = new Promise<'down'>((resolve) => {
    void page.exposeFunction('bringDown', () => resolve('down'));
  });
  await page.waitForFunction(() => 'bringDown' in globalThis);
  await call(page, 'start');
  return { page, device, answers, down };
}

/** Opens the journal as it was left by a kill, brings the same file in once more, and holds the end to what must be there. */
async function endsWhole(device: BrowserContext, answers: readonly string[], where: number): Promise<void> {
  const { page } = await begin(device);
  const { masses, size } = await call(page, 'look');
  const fromFile = size - masses.length;
  expect([where, [0, MANY].includes(fromFile)]).toEqual([where, true]);
  if (answers[0] === 'saved') expect([where, masses[0]]).toEqual([where, 81]);
  if (answers[1] === 'saved') expect([where, fromFile]).toEqual([where, MANY]);
  if (answers[2] === 'saved') expect([where, masses]).toEqual([where, [81, 80]]);
  const added = { added: MANY - fromFile, known: fromFile, problems: [], status: 'saved' };
  expect([where, await call(page, 'importText', fileOf('one'))]).toEqual([where, added]);
  const text = await call(page, 'journalText');
  const lines = text.split('\n').filter((line) => line.includes('"id":"file'));
  expect([where, lines.join('\n') === fileOf('one')]).toEqual([where, true]);
  await page.reload();
  await call(page, 'start');
  expect([where, (await call(page, 'journalText')) === text]).toEqual([where, true]);
  await device.close();
}

describe('a save and an import at every step of the storage', () => {
  test.each([
    ['throws', 7],
    ['is full', 7],
    // Undone before anything was in it, a transaction is begun anew, and nobody need hear of it.
    ['aborts', 3],
  ] as const)(
    '[SYN-37] where it %s: what is not saved is said, held, and goes out with the next save',
    async (how, faults) => {
      const { page, answers } = await begin();
      let [at, notSaved, told] = [1, 0, 0];
      for (let reached = true; reached; at += 1) {
        ({ reached } = await call(page, 'writeWithFault', fileOf(`${at}`), how, at));
        const { saving, masses, size } = await call(page, 'look');
        // All of it is on the screen, whatever the storage did; the line says how the last save ended.
        expect([at, masses.length, size, saving]).toEqual([at, 2 * at, (2 + MANY) * at, answers[2]]);
        notSaved += answers.filter((status) => status === 'notSaved').length;
        told += answers.filter((status) => status === 'saved').length;
        expect([at, (await call(page, 'retrySaving')).status]).toEqual([at, 'saved']);
      }
      expect([told + notSaved, at > 8]).toEqual([3 * (at - 1), true]);
      expect(notSaved).toBe(faults);
      const text = await call(page, 'journalText');
      await page.reload();
      await call(page, 'start');
      expect((await call(page, 'journalText')) === text).toBe(true);
      expect(await call(page, 'importText', fileOf('1'))).toMatchObject({ added: 0, known: MANY });
    },
  );

  test('[SYN-37] where it is the last before a kill: what was answered is there, and the same import completes', async () => {
    const cut = new Set<number>();
    let at = 1;
    for (let killed = true; killed; at += 1) {
      const { page, device, answers, down } = await begin();
      const kill = await bench.killer(page);
      const running = call(page, 'writeWithFault', fileOf('one'), 'is the last', at).catch(() => undefined);
      killed = (await Promise.race([down, running])) === 'down';
      if (killed) await kill();
      await running;
      cut.add(answers.length);
      await endsWhole(device, answers, at);
    }
    expect(at).toBeGreaterThan(10);
    expect(cut).toEqual(new Set([0, 1, 2, 3]));
  });
});
