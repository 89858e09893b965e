import { describe, expect, it } from 'vitest';
import { demoJournal } from '../../../demo/journal.ts';
import { story } from '../../../demo/story.ts';
import { createLedger } from '../journal/ledger.ts';
import { bodyLog, weighInsOf } from './body-log.ts';
import { bodyNow, readBody } from './body-now.ts';

const ledger = createLedger(demoJournal(1));

function body() {
  const log = bodyLog(ledger, story.today, () => undefined);
  const read = log.ok ? readBody(log.value) : log;
  if (!read.ok) throw new Error(read.problem.message);
  return bodyNow(read.value);
}

describe('the body as the journal has it', () => {
  it('[RUN-20] one weigh-in a day, and an estimate for every day since the first', () => {
    const weighed = weighInsOf(ledger, story.today);
    expect(new Set(weighed.map((one) => one.day)).size).toBe(weighed.length);
    const { answer, log: held } = body();
    expect(answer.days.at(-1)?.date).toBe(story.today);
    expect(answer.days.at(-1)?.massKg.mean).toBeGreaterThan(55);
    expect(answer.days.at(-1)?.massKg.sd).toBeLessThan(0.6);
    expect(held.days).toBe(answer.days.length);
    expect(held.weighIns).toBe(weighed.length);
  });

  it('[RUN-23] the parts of the last move add up to what the scale did', () => {
    const { jump } = body();
    if (!jump) throw new Error('the demonstration has no move of the scale');
    const [before, now] = weighInsOf(ledger, story.today).slice(-2);
    expect(jump).toMatchObject({ from: before?.day, to: now?.day });
    expect(jump.jumpKg).toBeCloseTo((now?.massKg ?? 0) - (before?.massKg ?? 0), 2);
    expect(jump.parts.reduce((sum, { kg }) => sum + kg, 0)).toBeCloseTo(jump.jumpKg, 1);
  });

  it('[RUN-20] without a weigh-in, or nobody described, it is said what to do', () => {
    const nobody = bodyLog(createLedger(), story.today, () => undefined);
    expect(nobody.ok ? '' : nobody.problem.remedy).toContain('first start');
    const described = ledger.entries().filter((entry) => entry.kind === 'athlete-described');
    const unweighed = bodyLog(createLedger(described), story.today, () => undefined);
    expect(unweighed.ok ? '' : unweighed.problem.remedy).toContain('Weigh in');
  });
});
