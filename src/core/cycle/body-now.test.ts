import { describe, expect, it } from 'vitest';
import { demoJournal } from '../../../demo/journal.ts';
import { story } from '../../../demo/story.ts';
import { createLedger } from '../journal/ledger.ts';
import { bodyNow } from './body-now.ts';

const ledger = createLedger(demoJournal(1));

describe('the body as the journal has it', () => {
  it('[RUN-20] one weigh-in a day, and an estimate for every day since the first', () => {
    const body = bodyNow(ledger, story.today, () => undefined);
    expect(new Set(body.weighed.map((one) => one.day)).size).toBe(body.weighed.length);
    if (!body.estimate.ok) throw new Error(body.estimate.problem.message);
    const last = body.estimate.value.days.at(-1);
    expect(last?.date).toBe(story.today);
    expect(last?.massKg.mean).toBeGreaterThan(55);
    expect(last?.massKg.sd).toBeLessThan(0.6);
  });

  it('[RUN-20] without a weigh-in it is said what to do', () => {
    const body = bodyNow(createLedger(), story.today, () => undefined);
    expect(body.estimate.ok ? '' : body.estimate.problem.remedy).toContain('Weigh in');
  });
});
