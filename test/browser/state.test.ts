import type { BrowserContext, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { canonicalLine } from '#core/journal/canonical-line.ts';
import { manyEntries } from '../contract/many-entries.ts';
import { buildPage } from './build-page.ts';
import { useBrowser, type OpenOptions } from './harness.ts';
import type { StatePage } from './pages/state-page.ts';

let folder = '';
beforeAll(async () => {
  folder = await buildPage('state-page.ts');
});
const bench = useBrowser(() => folder);

function call<Name extends keyof StatePage>(
  page: Page,
  name: Name,
  ...args: Parameters<StatePage[Name]>
): Promise<Awaited<ReturnType<StatePage[Name]>>> {
  return page.evaluate(([door, given]) => Reflect.get(globalThis, 'statePage')[door](...given), [
    name,
    args,
  ] as const);
}

const look = (page: Page) => call(page, 'look');

/** A page with one's own journal open. */
async function own(options: OpenOptions = {}) {
  const opened = await bench.open({ journal: 'own', ...options });
  await call(opened.page, 'start', false);
  return opened;
}

async function quota(device: BrowserContext, page: Page, bytes?: number): Promise<void> {
  const session = await device.newCDPSession(page);
  const size = bytes === undefined ? {} : { quotaSize: bytes };
  await session.send('Storage.overrideQuotaForOrigin', { origin: new URL(page.url()).origin, ...size });
}

describe('recording', () => {
  test('[JRN-60] [JRN-64] what was answered saved is there after the tab was killed', async () => {
    const { page, device } = await own();
    for (const massKg of [81, 80.5, 80]) {
      expect((await call(page, 'weigh', massKg)).status).toBe('saved');
    }
    await bench.kill(page);
    const { page: next } = await own({ device });
    expect((await look(next)).masses).toEqual([81, 80.5, 80]);
  });

  test('[JRN-12] what does not fit is refused and nothing is written', async () => {
    const { page } = await own();
    const saved = await call(page, 'weigh', -3);
    expect(saved).toMatchObject({
      status: 'refused',
      problem: { code: 'journal/wrong-value', path: 'massKg' },
    });
    expect(await look(page)).toMatchObject({ size: 0, revision: 0, saving: { status: 'saved' } });
    expect((await look(page)).undoable).toBeUndefined();
  });

  test('[JRN-60] before a journal is open nothing is taken as written', async () => {
    const { page } = await bench.open();
    expect(await call(page, 'weigh', 80)).toMatchObject({
      status: 'refused',
      problem: { code: 'store/no-journal' },
    });
    expect(await look(page)).toMatchObject({ size: 0, phase: 'starting' });
  });

  test('[JRN-66] switching journals while saving keeps each entry in its own', async () => {
    const { page } = await bench.open({ journal: 'own' });
    await call(page, 'start', true);
    const kept = await page.evaluate(async () => {
      const door = Reflect.get(globalThis, 'statePage');
      const writing = [door.weigh(70), door.openWhich('demo'), door.weigh(71), door.weigh(72)];
      await Promise.all(writing);
      // Asked for at once, the last wish counts.
      await Promise.all([door.openWhich('demo'), door.openWhich('own')]);
      return door.look().masses;
    });
    expect(kept).toEqual([70, 71, 72]);
    await call(page, 'openWhich', 'demo');
    expect((await look(page)).size).toBe(30);
  });

  test('[JRN-21] [JRN-20] a fact is of today unless said otherwise; another day without a time is noon', async () => {
    const { page } = await own({ at: '2027-03-02T00:40:00' });
    expect(await look(page)).toMatchObject({ today: '2027-03-01', nowClock: 1480 });
    await call(page, 'weigh', 80);
    await call(page, 'weigh', 81, { day: '2027-02-20' });
    await call(page, 'weigh', 82, { clock: 405 });
    expect((await look(page)).facts.map(({ day, minutes }) => [day, minutes])).toEqual([
      ['2027-02-20', 720],
      ['2027-03-01', 405],
      ['2027-03-01', 1480],
    ]);
  });

  test('[JRN-68] every half hour of a day is found again, on days when the clocks change too', async () => {
    for (const zone of [
      'Europe/Lisbon',
      'America/St_Johns',
      'Australia/Lord_Howe',
      'Pacific/Kiritimati',
      'UTC',
    ]) {
      const { page } = await bench.open({ zone });
      for (const day of ['2027-03-28', '2027-10-31', '2027-03-14', '2027-04-04', '2027-07-01']) {
        const found = await call(page, 'moments', day);
        const wrong = found.filter((text, i) => {
          const clock = `${String(Math.floor(i / 2)).padStart(2, '0')}:${i % 2 === 0 ? '00' : '30'}`;
          return text !== `${day}T${clock}`;
        });
        // The hour that the clocks jump over does not exist; it is read as the hour after.
        expect(wrong.length).toBeLessThanOrEqual(2);
      }
    }
  });
});

describe('undo', () => {
  test('[JRN-62] takes back a new fact, a correction, a removal, and several at once', async () => {
    const { page } = await own();
    await call(page, 'weigh', 81, { says: 'Weighed' });
    const [fact] = (await look(page)).facts;
    await call(page, 'correct', fact?.id ?? '', { massKg: 80 });
    expect((await look(page)).masses).toEqual([80]);
    await call(page, 'undo');
    expect((await look(page)).masses).toEqual([81]);
    await call(page, 'remove', (await look(page)).facts[0]?.id ?? '');
    expect((await look(page)).masses).toEqual([]);
    await call(page, 'undo');
    expect(await look(page)).toMatchObject({ masses: [81], undoable: 'Weighed' });
    await call(page, 'undo');
    expect((await look(page)).masses).toEqual([]);
    expect(await call(page, 'undo')).toBeUndefined();
    const both = [70, 71].map((massKg) => ({ kind: 'body-weighed' as const, data: { massKg } }));
    await call(page, 'recordAll', both, { says: 'Two scales' });
    expect(await look(page)).toMatchObject({ masses: [70, 71], undoable: 'Two scales' });
    await call(page, 'undo');
    expect(await look(page)).toMatchObject({ masses: [], size: 10 });
  });
});

describe('storage that fails', () => {
  test('[JRN-51] [JRN-61] full: it is said, nothing is lost, and it is saved when there is room', async () => {
    const { page, device } = await own();
    await quota(device, page, 200_000);
    expect((await call(page, 'weigh', 81)).status).toBe('saved');
    const file = manyEntries(2500, 'file').map(canonicalLine).join('\n');
    expect(await call(page, 'importText', file)).toMatchObject({ status: 'notSaved', added: 2500 });
    expect(await look(page)).toMatchObject({
      size: 2501,
      saving: { status: 'notSaved', held: 2500, problem: { code: 'store/full' } },
    });
    expect((await call(page, 'journalText')).split('\n')).toHaveLength(2502);
    await quota(device, page);
    expect((await call(page, 'weigh', 79.9)).status).toBe('saved');
    expect((await look(page)).saving).toEqual({ status: 'saved' });
    await bench.kill(page);
    const { page: next } = await own({ device });
    expect(await look(next)).toMatchObject({ size: 2502, saving: { status: 'saved' } });
  });

  test('[JRN-61] full and then killed: the lifeboat has it', async () => {
    const { page, device } = await own();
    await quota(device, page, 1);
    expect((await call(page, 'weigh', 80.2)).status).toBe('notSaved');
    await quota(device, page);
    await bench.kill(page);
    const { page: next } = await own({ device });
    expect(await look(next)).toMatchObject({ masses: [80.2], saving: { status: 'saved' } });
    await next.reload();
    await call(next, 'start', false);
    expect((await look(next)).masses).toEqual([80.2]);
  });
});

describe('two tabs', () => {
  test('[JRN-63] each sees at once what the other wrote, and both have it after a reload', async () => {
    const { page: one, device } = await own();
    const { page: two } = await own({ device });
    await call(one, 'weigh', 81);
    await two.waitForFunction(() => Reflect.get(globalThis, 'statePage').look().masses.length === 1);
    await call(two, 'weigh', 80);
    await one.waitForFunction(() => Reflect.get(globalThis, 'statePage').look().masses.length === 2);
    await one.reload();
    await call(one, 'start', false);
    expect((await look(one)).masses).toEqual([81, 80]);
    expect(await call(one, 'journalText')).toBe(await call(two, 'journalText'));
  });

  test('[JRN-63] a tab that slept reads what it missed when it comes to the front', async () => {
    const { page: one, device } = await own();
    const { page: two } = await own({ device });
    await two.evaluate(() => {
      // What a frozen tab misses: messages that were posted while it could not hear.
      BroadcastChannel.prototype.postMessage = () => undefined;
    });
    await call(two, 'weigh', 81);
    expect((await look(one)).masses).toEqual([]);
    await one.evaluate(() => globalThis.dispatchEvent(new Event('pageshow')));
    await one.waitForFunction(() => Reflect.get(globalThis, 'statePage').look().masses.length === 1);
  });

  test('[JRN-13] two tabs never write the same stamp', async () => {
    const { page: one, device } = await own({ at: '2027-03-01T10:00:00' });
    const { page: two } = await own({ device });
    await Promise.all([call(one, 'weigh', 80), call(two, 'weigh', 81)]);
    await one.reload();
    await call(one, 'start', false);
    const text = await call(one, 'journalText');
    const stamps = text
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line).stamp);
    expect(new Set(stamps).size).toBe(2);
  });
});

describe('drafts', () => {
  test('[JRN-65] what is typed survives a killed tab, and goes when cleared', async () => {
    const { page, device } = await own();
    await call(page, 'type', '80.');
    await call(page, 'type', '80.4');
    // Local storage is written by the browser's own process; a moment for the message to reach it.
    await page.waitForTimeout(50);
    await bench.kill(page);
    const { page: next } = await own({ device });
    expect(await call(next, 'typed')).toEqual({ massKg: '80.4', note: '' });
    await call(next, 'clearTyped');
    expect(await call(next, 'typed')).toEqual({ massKg: '', note: '' });
    await next.reload();
    await call(next, 'start', false);
    expect(await call(next, 'typed')).toEqual({ massKg: '', note: '' });
  });
});

describe('the demo and one’s own journal', () => {
  test('[JRN-66] the demo opens first, at its own time; one tap starts an empty journal of one’s own', async () => {
    const { page } = await bench.open();
    await call(page, 'start', true);
    expect(await look(page)).toMatchObject({
      phase: 'open',
      which: 'demo',
      chosen: false,
      size: 30,
      today: '2027-05-04',
    });
    await call(page, 'weigh', 90);
    await call(page, 'openWhich', 'own');
    const mine = await look(page);
    expect(mine).toMatchObject({ which: 'own', chosen: true, size: 0 });
    expect(mine.today).not.toBe('2027-05-04');
    await call(page, 'weigh', 70);
    await page.reload();
    await call(page, 'start', true);
    expect(await look(page)).toMatchObject({ which: 'own', chosen: true, masses: [70] });
    await call(page, 'openWhich', 'demo');
    expect((await look(page)).size).toBe(31);
    await call(page, 'restartDemo');
    expect(await look(page)).toMatchObject({ which: 'demo', size: 30 });
    await call(page, 'openWhich', 'own');
    expect((await look(page)).masses).toEqual([70]);
  });
});

describe('copies', () => {
  test('[JRN-67] a file taken in twice changes nothing; its damaged lines are named', async () => {
    const { page } = await own();
    const file = [...manyEntries(3, 'file').map(canonicalLine), '{"id":'].join('\n');
    expect(await call(page, 'previewImport', file)).toMatchObject({ added: 3, known: 0 });
    expect((await look(page)).size).toBe(0);
    const first = await call(page, 'importText', file);
    expect(first).toMatchObject({ added: 3, known: 0, status: 'saved', problems: [{ path: 'line 4' }] });
    const before = await call(page, 'journalText');
    expect(await call(page, 'importText', file)).toMatchObject({ added: 0, known: 3, status: 'saved' });
    expect(await call(page, 'journalText')).toBe(before);
    await page.reload();
    await call(page, 'start', false);
    expect(await call(page, 'journalText')).toBe(before);
  });

  test('[JRN-04] a whole journal taken into an empty device is the same to the byte', async () => {
    const { page } = await own();
    await call(page, 'weigh', 80);
    await call(page, 'importText', manyEntries(2500, 'many').map(canonicalLine).join('\n'));
    const text = await call(page, 'journalText');
    const { page: other } = await own();
    await call(other, 'importText', text);
    await other.reload();
    await call(other, 'start', false);
    expect(await call(other, 'journalText')).toBe(text);
  });

  test('[JRN-32] a table saved here comes back into an empty device the same', async () => {
    const { page } = await own();
    await call(page, 'importText', manyEntries(5, 'a').map(canonicalLine).join('\n'));
    const table = await call(page, 'exportAs', 'csv', '2027-03-01');
    expect(table).toMatchObject({ name: 'stagewright-2027-03-01.csv', mediaType: 'text/csv; charset=utf-8' });
    expect(await call(page, 'exportAs', 'xlsx', '2027-03-01')).toBeUndefined();
    const { page: other } = await own();
    const back = await call(other, 'importBytes', 'Table.CSV', [...Buffer.from(table?.text ?? '')]);
    expect(back).toMatchObject({ added: 5, problems: [], status: 'saved' });
    expect(await call(other, 'journalText')).toBe(await call(page, 'journalText'));
  });

  test('[JRN-67] bytes that are no text are named, the lines around them are taken', async () => {
    const { page } = await own();
    const [a = '', b = ''] = manyEntries(2, 'a').map(canonicalLine);
    const bytes = Buffer.concat([Buffer.from(`${a}\n`), Buffer.from([0xff, 0xfe, 0x0a]), Buffer.from(b)]);
    const taken = await call(page, 'importBytes', 'journal.jsonl', [...bytes]);
    expect(taken).toMatchObject({ added: 2, problems: [{ code: 'journal/not-text', path: 'line 2' }] });
  });

  test('[JRN-52] a photograph is kept beside the journal', async () => {
    const { page } = await own();
    expect(await call(page, 'photograph')).toBe('front');
  });
});
