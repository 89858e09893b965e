import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { passFirstStart } from './first-start.ts';
import { axeFindings, DESKTOP, scrollsSideways, smallTargets, useBrowser } from './harness.ts';
import { settle } from './settle.ts';

const app = useBrowser();
const TALL = { width: 390, height: 3200 };

async function press(page: Page, name: string | RegExp): Promise<void> {
  await settle(page);
  await page.getByRole('button', { name }).first().click();
}

async function fill(page: Page, fields: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, value] of Object.entries(fields))
    await page.getByRole('textbox', { name }).first().fill(value);
}

async function addExercise(page: Page, typed: string, option: RegExp): Promise<void> {
  await page.getByRole('combobox', { name: 'Exercise' }).fill(typed);
  await page.getByRole('option', { name: option }).first().click();
}

describe('one’s own gym', () => {
  it('[GYM-102] a day with a superset, one side at a time, is put together, begun, and goes on after a reload', async () => {
    const { page } = await app.open({ journal: 'own', at: '2027-03-08T17:00:00', viewport: TALL });
    await passFirstStart(page);
    await page.goto(`${app.address()}#/gym/template/new`);
    await press(page, 'Keep this day');
    await page.getByText('The training day has no name').first().waitFor();
    await fill(page, { Name: 'Legs' });
    await addExercise(page, 'one-leg ext', /^One-leg extension/);
    await addExercise(page, 'lying leg', /^Lying leg curl/);
    await page.getByRole('button', { name: 'Together with the one before: exercise 2' }).click();
    await page.getByText('superset').waitFor();
    await press(page, 'Keep this day');
    await page.getByRole('heading', { level: 1, name: 'Training days' }).waitFor();
    await page.goto(`${app.address()}#/gym`);
    await press(page, 'Begin: Legs');
    const card = page.getByRole('group', { name: 'The next set' });
    await card.getByText('Working set 1, left side').waitFor();
    await fill(page, { Pin: '1000', Repetitions: '9' });
    await press(page, 'Set done');
    await page.getByText('Pin: the most is 800 kg').first().waitFor();
    expect(await page.getByRole('textbox', { name: 'Pin' }).inputValue()).toBe('1000');
    await fill(page, { Pin: '35' });
    await press(page, 'Set done');
    await card.getByText('Working set 1, right side').waitFor();
    await fill(page, { Pin: '40' });
    await page.reload();
    await card.getByText('Working set 1, right side').waitFor();
    expect(await page.getByRole('textbox', { name: 'Pin', exact: true }).inputValue()).toBe('40');
    await press(page, 'Set done');
    await card.getByText('Lying leg curl').waitFor();
  });

  it('[GYM-101] a machine that passes over the top is described, drawn and said; sets on its pegs compare', async () => {
    const { page } = await app.open({ path: '/#/gym/describe', viewport: TALL });
    await fill(page, { Name: 'Rear lever', 'Lever at the start': '-10', 'Lever at the end': '110' });
    await press(page, 'Keep this machine');
    await page.getByText('The distance of the pad is missing').first().waitFor();
    await fill(page, { 'Pivot to pad or handle': '60', 'Its name': 'far', 'Pivot to the peg': '50' });
    await press(page, 'Keep this machine');
    await page.getByRole('heading', { level: 1, name: 'Rear lever' }).waitFor();
    await page.getByText('It passes over the top').waitFor();
    await page.getByText(/From 90° on the load pulls/).waitFor();
    // All 20 kg on the only peg: the equal load on it is itself.
    await page.getByRole('row', { name: /far 20.0 20.0/ }).waitFor();
  });

  it('[GYM-90] cardio is asked what is missing, says its energy with its spread, and is seen in the week', async () => {
    const { page } = await app.open({ path: '/#/gym', viewport: TALL });
    const minutes = async (): Promise<number> =>
      Number(
        (
          await page
            .getByText(/\d+ \(\d+ the week before\)/)
            .first()
            .textContent()
        )?.split(' ')[0],
      );
    const before = await minutes();
    await page.goto(`${app.address()}#/gym/cardio`);
    await fill(page, { Pace: '5', Grade: '6' });
    await page.getByRole('button', { name: /Net energy.*±/ }).waitFor();
    await press(page, 'Keep this cardio');
    await page.getByText('It is not said whether this was before food').first().waitFor();
    await page.getByText('Before food', { exact: true }).click();
    await press(page, 'Keep this cardio');
    await expect.poll(minutes).toBe(before + 30);
  });
});

const SCREENS = [
  'cardio',
  'volume',
  'loads',
  'weights',
  'machines',
  'machine/triple-peg-press',
  'describe/triple-peg-press',
  'exercises',
  'exercise/one-leg-press',
  'templates',
  'template/legs-front',
  'template/legs-front/one-leg-press',
];

/** Those whose paper stands side by side on the desk. */
const WIDE = new Set(['loads', 'machine/triple-peg-press', 'exercise/one-leg-press']);

describe('every screen of the gym beside the session', () => {
  it('[LOOK-21] passes axe, with large targets and no sideways scroll', async () => {
    const { page } = await app.open({ path: '/#/gym', viewport: TALL });
    for (const path of SCREENS) {
      for (const viewport of WIDE.has(path) ? [TALL, DESKTOP] : [TALL]) {
        await page.setViewportSize(viewport);
        await page.goto(`${app.address()}#/gym/${path}`);
        await page.getByRole('heading', { level: 1 }).waitFor();
        await page.waitForTimeout(200);
        expect([path, await axeFindings(page)]).toEqual([path, []]);
        expect([path, await smallTargets(page)]).toEqual([path, []]);
        expect([path, await scrollsSideways(page)]).toEqual([path, false]);
      }
    }
  });
});
