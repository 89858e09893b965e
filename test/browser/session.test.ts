import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { axeFindings, DESKTOP, PHONE, scrollsSideways, smallTargets, useBrowser } from './harness.ts';
import { settle } from './settle.ts';

const app = useBrowser();
const TALL = { width: 390, height: 3200 };

async function begin(page: Page): Promise<void> {
  await settle(page);
  await page.getByRole('button', { name: 'Begin: Legs, front' }).click();
  await page.getByRole('heading', { level: 1, name: 'Legs, front' }).waitFor();
}

async function logSet(page: Page): Promise<void> {
  await settle(page);
  await page.getByRole('button', { name: 'Set done' }).click();
  await page.getByText('Set logged').waitFor();
}

async function nextIs(page: Page, exercise: string, words: string): Promise<void> {
  const card = page.getByRole('group', { name: 'The next set' });
  await card.getByText(exercise, { exact: true }).waitFor();
  await card.getByText(words, { exact: true }).waitFor();
}

describe('a session on the phone', () => {
  it('[GYM-36] walks the sets, weaker side first, and goes on after the tab was killed', async () => {
    const { page, device } = await app.open({ path: '/#/gym', viewport: PHONE });
    await begin(page);
    await nextIs(page, 'One-leg press', 'Warm-up 1, left side');
    await logSet(page);
    await nextIs(page, 'One-leg press', 'Warm-up 1, right side');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
      'The next set',
    );
    await page.getByText('Rested').waitFor();
    await app.kill(page);
    const again = await app.open({ path: '/#/gym', viewport: PHONE, device });
    await again.page.getByRole('link', { name: 'Go on with the session' }).click();
    await nextIs(again.page, 'One-leg press', 'Warm-up 1, right side');
    await again.page.getByText('1 of 21 sets').waitFor();
  });

  it('[GYM-25] says what is to be beaten, with reasons, and logs what was done differently', async () => {
    const { page } = await app.open({ path: '/#/gym', viewport: TALL });
    await begin(page);
    await page.getByRole('button', { name: 'Top set 1, left', exact: true }).click();
    await nextIs(page, 'One-leg press', 'Top set 1, left side');
    await page.getByRole('button', { name: /^Expected to failure/ }).click();
    await page.getByText(/nine times of ten between/).waitFor();
    await page.keyboard.press('Escape');
    const reps = page.getByRole('textbox', { name: 'Repetitions' });
    await reps.fill('7');
    await page.getByText('2', { exact: true }).click();
    await logSet(page);
    await page
      .getByText(/× 7, left, 2 in reserve/)
      .first()
      .waitFor();
  });

  it('[GYM-33] a superset is walked in rounds; an exercise is replaced, and the order changed', async () => {
    const { page } = await app.open({ path: '/#/gym', viewport: TALL });
    await begin(page);
    await page.getByRole('link', { name: 'Change the session' }).click();
    await settle(page);
    await page.getByRole('button', { name: 'Do this first: One-leg extension and Lying leg curl' }).click();
    await nextIs(page, 'One-leg extension', 'Top set 1, left side');
    for (const side of ['left', 'right']) {
      await nextIs(page, 'One-leg extension', `Top set 1, ${side} side`);
      await logSet(page);
    }
    await nextIs(page, 'Lying leg curl', 'Top set 1');
    await page.getByRole('link', { name: 'Change the session' }).click();
    await page.getByRole('button', { name: 'Another exercise for Lying leg curl' }).click();
    await page.getByRole('combobox', { name: 'Find an exercise' }).fill('back ext');
    await page.getByRole('option', { name: /Back extension/ }).click();
    await nextIs(page, 'Back extension', 'Top set 1');
  });

  it('[GYM-60] pain noted in the session stands at the exercise the next time', async () => {
    const { page } = await app.open({ path: '/#/gym', viewport: TALL });
    await begin(page);
    await page.getByRole('link', { name: 'Note pain' }).click();
    await settle(page);
    await page.getByRole('button', { name: 'Keep this note' }).click();
    await page.getByText('It is not said where it hurts').first().waitFor();
    await page.getByRole('textbox', { name: 'Joint or place' }).fill('knee');
    await page.getByRole('textbox', { name: 'How much' }).fill('7');
    await settle(page);
    await page.getByRole('button', { name: 'Keep this note' }).click();
    await page.getByText('See a clinician').waitFor();
    await settle(page);
    await page.getByRole('button', { name: 'End the session' }).click();
    await page.getByText('No hard set is logged').waitFor();
  });

  it('[LOOK-21] every screen of the session passes axe, with large targets and no sideways scroll', async () => {
    const { page } = await app.open({ path: '/#/gym', viewport: TALL });
    await begin(page);
    const session = page.url().split('/').at(-1) ?? '';
    for (const path of [
      'gym',
      `gym/session/${session}`,
      `gym/change/${session}`,
      'gym/pain',
      `gym/done/${session}`,
    ]) {
      for (const viewport of [TALL, DESKTOP]) {
        await page.setViewportSize(viewport);
        await page.goto(`${app.address()}#/${path}`);
        await page.getByRole('heading', { level: 1 }).waitFor();
        await page.waitForTimeout(500);
        expect([path, await axeFindings(page)]).toEqual([path, []]);
        expect([path, await smallTargets(page)]).toEqual([path, []]);
        expect(await scrollsSideways(page)).toBe(false);
      }
    }
  });
});
