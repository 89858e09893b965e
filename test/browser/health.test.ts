import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { axeFindings, DESKTOP, scrollsSideways, smallTargets, useBrowser } from './harness.ts';
import { settle } from './settle.ts';

const app = useBrowser();
/** As wide as a phone and so tall that the fixed bars cover nothing. */
const TALL = { width: 390, height: 3600 };

/** A portal's file: a potassium that cannot wait, and an ALT without its unit. */
const results = {
  resourceType: 'Bundle',
  type: 'collection',
  entry: [
    observation('2823-3', 'Potassium', { value: 6.9, unit: 'mmol/L' }),
    observation('1742-6', 'ALT', { value: 31 }),
  ],
};

function observation(code: string, text: string, valueQuantity: object): object {
  return {
    resource: {
      resourceType: 'Observation',
      status: 'final',
      category: [{ coding: [{ code: 'laboratory' }] }],
      code: { coding: [{ system: 'http://loinc.org', code }], text },
      effectiveDateTime: '2027-03-03T07:40:00Z',
      valueQuantity,
    },
  };
}

/** The clock time of the run sheet's row that names something. */
async function timeOf(page: Page, words: string): Promise<string | null> {
  return page.locator('.run-row', { hasText: words }).first().locator('.run-time').textContent();
}

describe('doses on the run sheet', () => {
  it('[HLT-37] a day planned anew moves them with their meal; [HLT-38] one tap takes them, undo gives them back', async () => {
    const { page } = await app.open({ viewport: TALL });
    await page.getByText('Multivitamin, 1 tablet').waitFor();
    const before = await timeOf(page, 'Multivitamin, 1 tablet');
    await settle(page);
    await page.getByRole('button', { name: 'Running late: plan again from now' }).click();
    await page.getByText('What changed').waitFor();
    const after = await timeOf(page, 'Multivitamin, 1 tablet');
    expect([before, after !== null && after > '12:00']).toEqual(['07:00', true]);
    const row = page.locator('.run-row', { hasText: 'Multivitamin, 1 tablet' }).first();
    await settle(page);
    await row.getByRole('button', { name: /taken$/i }).click();
    await page.getByText('1 tablet taken').waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Multivitamin, 1 tablet').waitFor();
    await row.getByRole('link', { name: /skip/i }).click();
    await page.getByRole('button', { name: 'Skip Multivitamin' }).click();
    await settle(page);
    await page.getByRole('button', { name: 'Unwell' }).click();
    await page.getByText('Multivitamin skipped').waitFor();
  });
});

describe('blood', () => {
  it('[HLT-19] millimoles typed for milligrams are asked, and what is answered is kept', async () => {
    const { page } = await app.open({ path: '/#/health/panel/new', viewport: TALL });
    await page.getByRole('combobox', { name: 'Add what was measured' }).fill('gluc');
    await page.getByRole('option', { name: /Glucose/ }).click();
    await page.getByRole('textbox', { name: 'Glucose in mg/dL' }).fill('90');
    await page.getByRole('button', { name: 'Interval 70 to 99, of Glucose' }).click();
    await page.getByRole('radio', { name: 'mmol/L' }).check();
    await page.getByText('Which unit does the report print?').waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'It is 90 mg/dL' }).click();
    await settle(page);
    await page.getByRole('button', { name: 'Keep this panel' }).click();
    await page.getByRole('heading', { level: 1, name: /^Panel of/ }).waitFor();
    await page.getByText('interval 70 to 99').waitFor();
  });

  it('[HLT-27] a file is looked over, its missing unit asked; [HLT-18] what needs care now stands first', async () => {
    const { page } = await app.open({ path: '/#/health/file', viewport: TALL });
    await page.getByLabel('A FHIR file').setInputFiles({
      name: 'results.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(results)),
    });
    await page.getByRole('radio', { name: 'U/L', exact: true }).check();
    await settle(page);
    await page.getByRole('button', { name: 'Take in 1 panel' }).click();
    await page.getByRole('heading', { level: 1, name: /^Panel of/ }).waitFor();
    const alert = page.getByRole('alert').filter({ hasText: 'Potassium 6.9 mmol/L: seek care now' });
    await alert.waitFor();
    const [urgent, first] = await Promise.all([
      alert.boundingBox(),
      page.getByRole('heading', { level: 2 }).first().boundingBox(),
    ]);
    expect((urgent?.y ?? 9999) < (first?.y ?? 0)).toBe(true);
    await page.getByRole('link', { name: 'Health' }).click();
    await page.getByRole('heading', { level: 1, name: 'Health' }).waitFor();
    await page.getByRole('alert').filter({ hasText: 'seek care now' }).waitFor();
    await page.getByRole('link', { name: 'Day', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: 'Day' }).waitFor();
    await page.getByRole('alert').filter({ hasText: 'seek care now' }).waitFor();
  });
});

const SCREENS = [
  'health',
  'health/supplements',
  'health/sums',
  'health/label/new',
  'health/product/iron',
  'health/regimen/iron/iron-waking',
  'health/medicine/new',
  'health/panel/new',
  'health/panel/panel-after-legs',
  'health/panel/panel-after-legs/correct',
  'health/trend/ck',
  'health/sheet/panel-after-legs',
  'health/draw',
  'health/draw/change',
  'health/file',
  'health/recovery',
  'day/doses/meal-1',
];

describe('every screen of Health', () => {
  it.each([
    ['phone', { viewport: TALL }, SCREENS],
    ['phone by night', { viewport: TALL, dark: true }, ['health/panel/panel-after-legs', 'health/sums']],
    ['desk', { viewport: DESKTOP }, ['health', 'health/trend/ck', 'health/panel/new', 'health/recovery']],
  ])('[LOOK-21] on the %s: axe, large targets, no sideways scroll', async (_, look, screens) => {
    const { page } = await app.open({ path: '/#/health', ...look });
    for (const path of screens) {
      await page.evaluate((hash) => {
        globalThis.location.hash = hash;
      }, `#/${path}`);
      await page.waitForTimeout(250);
      await page.getByRole('heading', { level: 1 }).waitFor();
      expect([path, await axeFindings(page)]).toEqual([path, []]);
      expect([path, await smallTargets(page)]).toEqual([path, []]);
      expect([path, await scrollsSideways(page)]).toEqual([path, false]);
    }
  });
});
