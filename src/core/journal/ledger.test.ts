import { describe, expect, test } from 'vitest';
import { oneEntry } from '../../../test/journal/one-entry.ts';
import { createLedger } from './ledger.ts';

const weighed = (massKg: number, given = {}) => oneEntry({ data: { massKg }, ...given });
const masses = (ledger: ReturnType<typeof createLedger>) =>
  ledger.of('body-weighed').map((fact) => fact.data.massKg);

describe('corrections', () => {
  test('[JRN-07] a correction takes the place of what it corrects; the history keeps both', () => {
    const first = weighed(80);
    const second = weighed(79.4, { replaces: first.id });
    const ledger = createLedger([first, second]);
    expect(masses(ledger)).toEqual([79.4]);
    expect(ledger.history(first.id)).toEqual([first, second]);
    expect([ledger.inForce(first.id), ledger.inForce(second.id)]).toEqual([false, true]);
  });

  test('[JRN-07] a correction that arrives before what it corrects counts all the same', () => {
    const first = weighed(80);
    const ledger = createLedger([weighed(79.4, { replaces: first.id })]);
    ledger.add([first]);
    expect(masses(ledger)).toEqual([79.4]);
  });

  test('[JRN-07] two devices correct the same fact: the greatest stamp counts, both stay', () => {
    const first = weighed(80);
    const here = weighed(79, { replaces: first.id });
    const there = weighed(78, { replaces: first.id });
    const ledger = createLedger([there, here, first]);
    expect(masses(ledger)).toEqual([78]);
    expect(ledger.history(here.id)).toEqual([first, here, there]);
  });

  test('[JRN-07] a correction counts even where its stamp is earlier than what it corrects (a clock was wrong)', () => {
    const fromTheFuture = weighed(80, { stamp: '2031-01-01T00:00:00.000Z-0000-tester' });
    const ledger = createLedger([fromTheFuture, weighed(79, { replaces: fromTheFuture.id })]);
    expect(masses(ledger)).toEqual([79]);
  });

  test('[JRN-07] a circle of corrections, a correction of itself and of nothing do no harm', () => {
    const a = weighed(70, { id: 'a', replaces: 'b' });
    const b = weighed(71, { id: 'b', replaces: 'c' });
    const c = weighed(72, { id: 'c', replaces: 'a' });
    const itself = weighed(73, { id: 'd', replaces: 'd' });
    const ofNothing = weighed(74, { replaces: 'never-written' });
    const ledger = createLedger([c, itself, a, ofNothing, b]);
    expect(masses(ledger)).toEqual([72, 73, 74]);
    expect(ledger.history('a')).toEqual([a, b, c]);
  });

  test('[JRN-08] a removal takes a fact out; a later correction brings it back', () => {
    const fact = weighed(80);
    const removal = oneEntry({ kind: 'entry-removed', data: {}, replaces: fact.id });
    const ledger = createLedger([fact, removal]);
    expect([masses(ledger), ledger.days()]).toEqual([[], []]);
    ledger.add([weighed(80, { replaces: removal.id })]);
    expect(masses(ledger)).toEqual([80]);
    expect(ledger.history(fact.id)).toHaveLength(3);
  });

  test('[JRN-07] a correction that moves a fact to another day leaves nothing behind', () => {
    const fact = weighed(80);
    const ledger = createLedger([fact]);
    expect(ledger.onDay('2027-03-01')).toHaveLength(1);
    ledger.add([weighed(80, { replaces: fact.id, day: '2027-02-28' })]);
    expect([ledger.onDay('2027-03-01').length, ledger.onDay('2027-02-28').length]).toEqual([0, 1]);
    expect(ledger.days()).toEqual(['2027-02-28']);
  });
});

describe('what is kept but not counted', () => {
  test('[JRN-17] data that does not fit its kind is listed until it is corrected', () => {
    const odd = weighed(-4);
    const ledger = createLedger([odd]);
    expect(masses(ledger)).toEqual([]);
    expect(ledger.problems).toEqual([
      {
        code: 'journal/data-does-not-fit',
        path: odd.id,
        message: 'The entry "body-weighed" of 2027-03-01 is kept but not counted. "massKg" is -4.',
        remedy: 'Make it kilograms from 25 to 350. Correct or remove the entry in the Journal.',
      },
    ]);
    ledger.add([weighed(84, { replaces: odd.id })]);
    expect([masses(ledger), ledger.problems]).toEqual([[84], []]);
  });

  test('[JRN-09] an unknown kind is kept, has a history, and is no problem', () => {
    const strange = oneEntry({ kind: 'moon-seen', data: { phase: 'full' } });
    const ledger = createLedger([strange]);
    expect([ledger.entries(), ledger.onDay(strange.day), ledger.problems]).toEqual([[strange], [], []]);
  });

  test('[JRN-11] an entry of a newer version is kept, not counted, and said', () => {
    const ledger = createLedger([weighed(80, { version: 2 })]);
    expect(masses(ledger)).toEqual([]);
    expect(ledger.problems[0]?.code).toBe('journal/newer-version');
  });

  test('[JRN-05] one id for two entries: said, and the same one counts whichever came first', () => {
    const [light, heavy] = [weighed(80, { id: 'twice' }), weighed(90, { id: 'twice' })];
    const ledgers = [createLedger([light, heavy]), createLedger([heavy, light])];
    for (const ledger of ledgers) expect(ledger.problems[0]?.code).toBe('journal/id-clash');
    expect(ledgers.map(masses)).toEqual([[90], [90]].map((m) => m));
  });
});

describe('what a ledger knows', () => {
  test('[JRN-06] its size, newest fact, greatest stamp that can be read, and how often it grew', () => {
    const ledger = createLedger();
    expect([ledger.size, ledger.revision, ledger.latestStamp, ledger.latest('body-weighed')]).toEqual([
      0,
      0,
      undefined,
      undefined,
    ]);
    const [first, second] = [weighed(80), weighed(79)];
    ledger.add([second, first]);
    ledger.add([oneEntry({ stamp: 'zzz-of-another-program', kind: 'moon-seen' })]);
    expect(ledger.add([first])).toBe(0);
    expect([ledger.size, ledger.revision, ledger.latestStamp]).toEqual([3, 2, second.stamp]);
    expect([ledger.latest('body-weighed')?.data.massKg, ledger.entry(first.id)]).toEqual([79, first]);
    expect(ledger.entry('nowhere')).toBeUndefined();
  });

  test('[JRN-06] the same entry with its fields in another order is the same entry', () => {
    const meal = oneEntry({ kind: 'moon-seen', data: { items: [{ a: 1, b: [2, 3] }], at: null } });
    const turned = { ...meal, data: { at: null, items: [{ b: [2, 3], a: 1 }] } };
    const ledger = createLedger([meal]);
    expect([ledger.add([turned]), ledger.problems]).toEqual([0, []]);
    const others = [
      { items: [{ a: 1, b: [3, 2] }], at: null },
      { items: [{ a: 1 }], at: null },
      { items: {}, at: null },
    ];
    for (const data of others) {
      expect(createLedger([meal, { ...meal, data }]).problems[0]?.code).toBe('journal/id-clash');
    }
  });
});

describe('times of a fact', () => {
  test('[JRN-20] minutes run on past midnight of the prep day and below it before', () => {
    const after = weighed(80, { at: '2027-03-02T00:30:00+01:00' });
    const before = weighed(80, { at: '2027-02-28T23:30:00+01:00' });
    const minutes = createLedger([after, before])
      .of('body-weighed')
      .map((fact) => fact.minutes);
    expect(minutes).toEqual([-30, 1470]);
  });
});
