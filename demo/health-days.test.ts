import { describe, expect, it } from 'vitest';
import { panelReading } from '#core/cycle/blood-now.ts';
import { healthNow } from '#core/cycle/health-now.ts';
import { sumsNow } from '#core/cycle/supplements-now.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { demoJournal } from './journal.ts';
import { story } from './story.ts';

const ledger = createLedger(demoJournal(1));
const now = healthNow(ledger, story.today);

describe('the invented athlete’s health', () => {
  it('[DEM-09] shows products that run out, sums over a limit, and a draw a week ahead', () => {
    expect(now.products.filter(({ stock }) => stock?.daysBeforeShow !== undefined).length).toBeGreaterThan(0);
    expect(now.products.every(({ stock }) => stock?.belowZero === false)).toBe(true);
    expect(sumsNow(ledger, story.today)?.nutrients.some(({ duplicate }) => duplicate)).toBe(true);
    expect(now.draw?.data.date).toBe('2027-03-11');
    expect(now.drawPlan?.items[0]?.day).toBe(story.today);
  });

  it('[DEM-09] has a panel after the legs that shows the muscle pattern, and an ordinary one before', () => {
    const after = panelReading(ledger, 'panel-after-legs');
    const before = panelReading(ledger, 'panel-early');
    if (!after.ok || !before.ok) throw new Error('a panel cannot be read');
    expect(after.value.request.drawn.hoursSinceHardTraining).toBeLessThan(24);
    expect(after.value.cautions.some(({ words }) => words.startsWith('Muscle pattern'))).toBe(true);
    expect(after.value.withheld.some(({ key }) => key === 'fib4')).toBe(true);
    expect(before.value.results.filter(({ flag }) => flag === 'high' || flag === 'low')).toEqual([]);
    expect(now.urgent).toEqual([]);
  });

  it('[DEM-09] has weeks of notes, and a screen that does not cry wolf', () => {
    expect(now.recovery.before.length).toBeGreaterThan(9);
    expect(now.screen?.level).not.toBe('too little noted');
  });
});
