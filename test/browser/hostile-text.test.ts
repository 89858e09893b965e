import { describe, expect, it } from 'vitest';
import type { Entry } from '#core/journal/entry.ts';
import { writeJournal } from '#core/journal/write-journal.ts';
import { demoJournal } from '../../demo/journal.ts';
import { useBrowser } from './harness.ts';
import { passFirstStart } from './first-start.ts';

const app = useBrowser();
const SCRIPT = '<img src=x onerror="window.ran=1"><script>window.ran=1</script>"\'>{{ran}}';
const PLACES = [
  'day',
  'body',
  'kitchen',
  'gym',
  'health',
  'course',
  'journal',
  'journal/check',
  'journal/devices',
];
const TEXTS = /^(name|text|says|note|notes|title|reason|words|brand|maker|label)$/i;

/** The same entries, with script in every name, note and title. */
function hostile(entries: readonly Entry[]): {
  readonly entries: readonly Entry[];
  readonly changed: number;
} {
  let changed = 0;
  const turned = (value: unknown, field: string): unknown => {
    if (typeof value === 'string' && TEXTS.test(field)) {
      changed += 1;
      return SCRIPT;
    }
    if (Array.isArray(value)) return value.map((part) => turned(part, field));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, turned(part, name)]));
  };
  const all = entries.map((entry) => ({
    ...entry,
    data: Object.fromEntries(Object.entries(entry.data).map(([name, part]) => [name, turned(part, name)])),
  }));
  return { entries: all, changed };
}

describe('text that would like to be more', () => {
  it('[SYN-22] script in every name and note of an imported file is shown as text in every place', async () => {
    const { page } = await app.open({ journal: 'own', at: '2027-03-08T06:30:00' });
    await passFirstStart(page);
    const { entries, changed } = hostile(demoJournal(1));
    expect(changed).toBeGreaterThan(50);
    await page.goto(`${app.address()}#/journal/copies`);
    await page.getByLabel('A copy of a journal').setInputFiles({
      name: 'hostile.jsonl',
      mimeType: 'application/x-ndjson',
      buffer: Buffer.from(writeJournal(entries)),
    });
    await page.getByText(/entries came in/).waitFor();
    let shown = 0;
    for (const place of PLACES) {
      await page.goto(`${app.address()}#/${place}`);
      await page.locator('h1').first().waitFor();
      shown += (await page.locator('main').innerText()).includes('<img src=x') ? 1 : 0;
      expect([place, await page.locator('main script, main img[src="x"]').count()]).toEqual([place, 0]);
      expect([place, await page.evaluate(() => 'ran' in globalThis)]).toEqual([place, false]);
    }
    expect(shown).toBeGreaterThan(1);
  });

  it('[SYN-22] bombs in a file are named line by line, and what stands beside them comes in', async () => {
    const { page } = await app.open({ journal: 'own', at: '2027-03-08T06:30:00' });
    await passFirstStart(page);
    await page.goto(`${app.address()}#/journal/copies`);
    const [good] = demoJournal(1);
    if (!good) throw new Error('the demonstration is empty');
    const line = writeJournal([good]).trimEnd();
    const lines = [
      '['.repeat(200_000),
      line.replace('{', `{"deep":${'{"a":'.repeat(5000)}1${'}'.repeat(5000)},`),
      line.replace('{', '{"huge":1e999,'),
      `{"id":"${'x'.repeat(1_100_000)}"}`,
      line.replace('{', '{"__proto__":{"polluted":1},'),
      line,
    ];
    await page.getByLabel('A copy of a journal').setInputFiles({
      name: 'bombs.jsonl',
      mimeType: 'application/x-ndjson',
      buffer: Buffer.from(lines.join('\n')),
    });
    await page.getByText(/1 entry came in/).waitFor();
    for (const number of [1, 2, 3, 4]) await page.getByText(`line ${number}:`).first().waitFor();
    expect(await page.evaluate(() => 'polluted' in {})).toBe(false);
  });
});
