import { describe, expect, it } from 'vitest';
import { createLedger } from '#core/journal/ledger.ts';
import { datedEntry as entry } from '../../../../test/journal/dated-entry.ts';
import { addDays } from '#core/units/civil-date.ts';
import { readPanel } from '../panel/read-panel.ts';
import { energyScreen, type ScreenRequest } from './energy-screen.ts';
import { cyclesIn, feltDays } from './recovery-notes.ts';
import { weeklyRecovery } from './weekly-recovery.ts';

const feltFor = (days: number, data: object, until = '2027-03-14') =>
  Array.from({ length: days }, (_, back) => ({ day: addDays(until, -back), felt: data }));

describe("the week's recovery", () => {
  const notes = [
    ...Array.from({ length: 14 }, (_, n) =>
      entry('feeling-noted', { restingHeartRateBpm: 60, sleepHours: 7.5 }, addDays('2027-01-04', n)),
    ),
    ...Array.from({ length: 7 }, (_, n) =>
      entry('feeling-noted', { restingHeartRateBpm: 52, hunger: 3, jointPain: 2 }, addDays('2027-03-01', n)),
    ),
    ...Array.from({ length: 4 }, (_, n) =>
      entry(
        'feeling-noted',
        { restingHeartRateBpm: 46, hunger: 5, mood: 4, sleepHours: 6.5 },
        addDays('2027-03-08', n),
      ),
    ),
  ];

  it('[HLT-60] is the mean of what was noted, beside the weeks before and the start', () => {
    const week = weeklyRecovery(createLedger(notes), '2027-03-08', '2027-01-04');
    const heart = week.measures.find(({ measure }) => measure === 'restingHeartRateBpm');
    expect(heart).toMatchObject({ mean: 46, days: 4, before: 52, atStart: 60, thin: false });
    expect(heart?.words).toBe(
      'Resting heart rate 46 a minute over 4 days, 52 in the four weeks before, 60 at the start.',
    );
  });

  it('[HLT-60] a measure whose 5 is the worst says so beside its mean', () => {
    const { measures: week } = weeklyRecovery(createLedger(notes), '2027-03-08');
    const words = (name: string) => week.find(({ measure }) => measure === name)?.words;
    expect(words('hunger')).toMatch(/^Hunger 5 of 5 \(5 is gnawing\) over 4 days/);
    expect(words('mood')).toMatch(/^Mood 4 of 5 over 4 days/);
  });

  it('[HLT-60] gives the check-in scores with 5 as the best, and none for what was not noted', () => {
    expect(weeklyRecovery(createLedger(notes), '2027-03-08').scores).toEqual({
      hunger: 1,
      mood: 4,
      sleep: 4,
    });
    expect(weeklyRecovery(createLedger(notes), '2027-03-01').scores).toEqual({ hunger: 3, joints: 4 });
    expect(weeklyRecovery(createLedger([]), '2027-03-08')).toMatchObject({
      measures: [],
      scores: {},
      why: ['Nothing was noted this week.'],
    });
  });

  it('[HLT-60] several notes of a day are one, the last of each thing counts', () => {
    const ledger = createLedger([
      entry('feeling-noted', { mood: 2, libido: 3 }, '2027-03-08'),
      entry('feeling-noted', { mood: 4 }, '2027-03-08'),
    ]);
    expect(feltDays(ledger, '2027-03-08', '2027-03-08')).toEqual([
      { day: '2027-03-08', felt: { mood: 4, libido: 3 } },
    ]);
    expect(createLedger([entry('feeling-noted', {}, '2027-03-08')]).problems).toHaveLength(1);
  });

  it('[HLT-60] an absence of menses is over when they begin again', () => {
    const absent = entry('cycle-noted', { event: 'no menses for three months' }, '2027-02-01');
    expect(cyclesIn(createLedger([absent]), '2027-03-01').absentNotedOn).toBe('2027-02-01');
    const back = entry('cycle-noted', { event: 'menses began' }, '2027-02-20');
    expect(cyclesIn(createLedger([absent, back]), '2027-03-01')).toEqual({ began: ['2027-02-20'] });
  });
});

describe('the screen for too little energy', () => {
  const woman: ScreenRequest = {
    sex: 'female',
    today: '2027-03-14',
    felt: [],
    cycles: { began: ['2027-02-01', '2027-03-01'] },
  };
  const man: ScreenRequest = { sex: 'male', today: '2027-03-14', felt: [] };
  const panel = (values: object[], sex = 'male') => {
    const reading = readPanel({
      athlete: { sex, age: 30 },
      drawn: { date: '2027-03-10', time: '07:30' },
      taking: [],
      values,
    });
    if (!reading.ok) throw new Error(reading.problem.message);
    return reading.value;
  };

  // Indicators of the IOC REDs clinical assessment tool, version 2 (Br J Sports Med 2023;57:1109).
  it('[HLT-61] three months without menses are a primary indicator: a physician, a pregnancy test first', () => {
    const screen = energyScreen({ ...woman, cycles: { began: ['2026-12-01'] } });
    expect(screen).toMatchObject({ level: 'see a physician', signs: [{ weight: 'primary' }] });
    expect(screen.signs[0]?.words).toContain('pregnancy test');
    expect(energyScreen({ ...woman, cycles: { began: [], absentNotedOn: '2027-03-01' } }).level).toBe(
      'see a physician',
    );
  });

  it('[HLT-61] more than 35 days between menses are a secondary indicator', () => {
    expect(energyScreen({ ...woman, cycles: { began: ['2027-01-20', '2027-03-01'] } })).toMatchObject({
      level: 'watch',
      signs: [{ weight: 'secondary' }],
    });
    expect(energyScreen(woman).signs).toEqual([]);
  });

  it('[HLT-61] a contraceptive hides the cycle, and that is said', () => {
    const screen = energyScreen({ ...woman, cycles: { began: ['2026-10-01'] }, contraceptive: true });
    expect(screen.signs).toEqual([]);
    expect(screen.notLookedAt.join()).toContain('contraceptive');
  });

  it('[HLT-61] in men low testosterone, in all low T3: below the interval or in its lowest quarter', () => {
    const withTestosterone = (value: number) =>
      energyScreen({ ...man, panel: panel([{ name: 'testosterone', value, unit: 'ng/dL' }]) });
    expect(withTestosterone(250).level).toBe('see a physician');
    expect(withTestosterone(480).signs[0]?.words).toContain('lowest quarter');
    expect(withTestosterone(600).signs).toEqual([]);
    const t3 = (sex: 'female' | 'male') =>
      energyScreen({
        ...(sex === 'male' ? man : woman),
        panel: panel([{ name: 'free T3', value: 2.5, unit: 'pg/mL' }], sex),
      });
    expect(t3('female').signs[0]?.sign).toBe('low T3');
    expect(t3('male').signs[0]?.sign).toBe('low T3');
  });

  it('[HLT-61] LDL above its interval is a secondary indicator', () => {
    expect(
      energyScreen({ ...man, panel: panel([{ name: 'LDL', value: 150, unit: 'mg/dL' }]) }).signs[0]?.weight,
    ).toBe('secondary');
  });

  it('[HLT-61] energy availability: 30 for women (Loucks 2003), 25 for men (Fagerberg 2018, no agreed threshold)', () => {
    const at = (request: ScreenRequest, kcalPerKgFfm: number) =>
      energyScreen({ ...request, availability: { kcalPerKgFfm, days: 14 } }).signs;
    expect(at(woman, 29)).toMatchObject([{ weight: 'exposure' }]);
    expect(at(woman, 30)).toEqual([]);
    expect(at(man, 24)[0]?.words).toContain('no threshold is agreed');
    expect(at(man, 29)).toEqual([]);
  });

  it('[HLT-62] a resting heart rate below 40 over a week is a reason by itself, one night is none', () => {
    expect(energyScreen({ ...man, felt: feltFor(7, { restingHeartRateBpm: 38 }) }).level).toBe(
      'see a physician',
    );
    expect(energyScreen({ ...man, felt: feltFor(1, { restingHeartRateBpm: 38 }) }).signs).toEqual([]);
    expect(energyScreen({ ...man, felt: feltFor(7, { restingHeartRateBpm: 44 }) }).signs).toEqual([]);
  });

  it('[HLT-62] one possible sign is watched, three are a reason; old notes do not count', () => {
    expect(energyScreen({ ...man, felt: feltFor(7, { libido: 1 }) }).level).toBe('watch');
    expect(energyScreen({ ...man, felt: feltFor(7, { libido: 1, mood: 2, sleepHours: 5 }) }).level).toBe(
      'see a physician',
    );
    expect(energyScreen({ ...man, felt: feltFor(7, { libido: 1 }, '2027-01-20') }).signs).toEqual([]);
  });

  it('[HLT-62] nothing noted is not the same as nothing known', () => {
    expect(energyScreen(man).level).toBe('too little noted');
    expect(energyScreen({ ...man, felt: feltFor(7, { libido: 4, mood: 4 }) }).level).toBe('nothing noted');
    expect(energyScreen(man).notLookedAt).toHaveLength(3);
  });

  it('[HLT-62] is never without: no diagnosis, a physician, eating disorders', () => {
    const { caution } = energyScreen(man);
    expect(caution).toContain('not a diagnosis');
    expect(caution).toContain('physician');
    expect(caution).toContain('eating disorders');
  });
});
