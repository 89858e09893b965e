import { describe, expect, it } from 'vitest';
import { createScribe } from '../../../demo/scribe.ts';
import { utc } from '../../../demo/story.ts';
import { showsFrom } from '../course/read-course.ts';
import { createLedger } from '../journal/ledger.ts';
import { isoWeekday } from '../units/civil-date.ts';
import { seasonDates, usualDates, weeklyUntil } from './season-dates.ts';

function season(write: (scribe: ReturnType<typeof createScribe>) => void = () => undefined) {
  const scribe = createScribe(5, utc);
  scribe.write('2027-03-01', '06:00', 'show-set', {
    show: 'cup',
    name: 'Harbour Cup',
    date: '2027-05-01',
    target: { bodyFatPercentMax: 14 },
  });
  write(scribe);
  return createLedger(scribe.entries);
}
const suggest = (ledger: ReturnType<typeof season>, today = '2027-03-04') => {
  const [show] = showsFrom(ledger, today);
  return show ? usualDates(ledger, show, today) : [];
};

describe('[CRS-26] the season by its dates', () => {
  it('[CRS-26] shows and tasks in the order of the calendar, what is past left out', () => {
    const ledger = season((scribe) => {
      for (const [date, at, title] of [
        ['2027-05-01', '07:00', 'Second coat of tan'],
        ['2027-03-20', '18:00', 'Posing'],
        ['2027-03-20', '09:00', 'Registration closes'],
        ['2027-03-02', '18:00', 'Posing'],
      ] as const)
        scribe.write('2027-03-01', '07:00', 'event-dated', {
          event: `${date} ${at}`,
          title,
          type: 'other',
          date,
          at,
        });
    });
    const titles = seasonDates(ledger, '2027-03-04').map((one) =>
      one.type === 'show' ? one.show.data.name : one.fact.data.title,
    );
    expect(titles).toEqual(['Registration closes', 'Posing', 'Second coat of tan', 'Harbour Cup']);
  });

  it('[CRS-26] the usual dates are laid back from the show, only those still ahead and not there yet', () => {
    const ledger = season();
    const usual = suggest(ledger);
    expect(usual.map(({ title }) => title)).toEqual([
      'Posing practice',
      'Registration closes',
      'Rehearse the last week',
      'Travel to the show',
      'Athlete check-in',
      'First coat of tan',
    ]);
    const posing = usual[0]?.events ?? [];
    expect([posing[0]?.date, posing.at(-1)?.date]).toEqual(['2027-03-06', '2027-04-24']);
    expect(new Set(posing.map(({ date }) => isoWeekday(date)))).toEqual(new Set([6]));
    expect(suggest(ledger, '2027-04-29').map(({ title }) => title)).toEqual([
      'Travel to the show',
      'Athlete check-in',
      'First coat of tan',
    ]);
    const rehearsed = (date: string) =>
      season((scribe) =>
        scribe.write('2027-03-01', '07:00', 'event-dated', {
          event: 'early',
          title: 'Rehearsal',
          type: 'rehearsal',
          date,
          show: 'cup',
          done: true,
        }),
      );
    const offered = (ledger: ReturnType<typeof season>) => suggest(ledger).map(({ title }) => title);
    expect(offered(rehearsed('2027-02-20'))).toContain('Rehearse the last week');
    expect(offered(rehearsed('2027-04-03'))).not.toContain('Rehearse the last week');
    const had = season((scribe) =>
      scribe.write('2027-03-01', '07:00', 'event-dated', {
        event: 'a',
        title: 'Tan',
        type: 'tanning',
        date: '2027-04-30',
        show: 'cup',
      }),
    );
    expect(suggest(had).map(({ title }) => title)).not.toContain('First coat of tan');
  });

  it('[CRS-26] travel is sooner by how far the clocks are apart; the date line asks for no day of its own', () => {
    const [show] = showsFrom(season(), '2027-03-04');
    const leaves = (minutes: number) =>
      show &&
      usualDates(season(), show, '2027-03-04', minutes).find(({ title }) => title.startsWith('Travel'))
        ?.events[0]?.date;
    // Honolulu (UTC-10) and Kiritimati (UTC+14) show the same clock on different dates.
    expect([0, 60, -180, 24 * 60].map(leaves)).toEqual([
      '2027-04-30',
      '2027-04-29',
      '2027-04-28',
      '2027-04-30',
    ]);
    // Lisbon in summer (UTC+1) and Auckland (UTC+12): eleven hours on the dial.
    expect(leaves(660)).toBe('2027-04-23');
    expect(leaves(-780)).toBe('2027-04-23');
  });

  it('[CRS-26] a weekly date keeps its weekday and ends before the show', () => {
    expect(weeklyUntil('2027-04-07', '2027-05-01')).toEqual([
      '2027-04-07',
      '2027-04-14',
      '2027-04-21',
      '2027-04-28',
    ]);
    expect(weeklyUntil('2027-05-01', '2027-05-01')).toEqual(['2027-05-01']);
  });
});
