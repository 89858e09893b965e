import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { createScribe } from '../../../demo/scribe.ts';
import { utc } from '../../../demo/story.ts';
import { calendarOf, type CalendarDate } from '#core/cycle/calendar.ts';
import type { DatedEvent } from '#core/course/read-course.ts';
import { stretchIds } from '#core/course/stretch-ids.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { momentInZone } from '../time-zones/time-zones.ts';
import { writeCalendar } from './icalendar.ts';
import { journalExports } from './journal-formats.ts';

/** Reads a calendar with a general library, ical.js, in its strict mode. */
function read(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return {
    calendar,
    events: calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event)),
  };
}

const tasks: readonly DatedEvent[] = [
  { event: 'a', title: 'Posing', type: 'posing practice', date: '2027-03-20', at: '18:00', minutes: 30 },
  { event: 'b', title: 'Athlete check-in', type: 'check-in', date: '2027-05-01', at: '16:00', show: 'cup' },
  { event: 'c', title: 'Registration closes', type: 'registration', date: '2027-03-21' },
];

function season() {
  const scribe = createScribe(6, utc);
  scribe.write('2027-03-01', '06:00', 'show-set', {
    show: 'cup',
    name: 'Harbour Cup; the 9th, "spring"',
    date: '2027-05-02',
    zone: 'Pacific/Auckland',
    place: 'Town hall,\nnorth door',
    class: { name: 'figure', heightMaxCm: 168 },
    target: { bodyFatPercentMax: 14 },
  });
  const [task = ''] = tasks.map((data, k) => scribe.write('2027-03-01', `06:0${k + 1}`, 'event-dated', data));
  scribe.write('2027-03-01', '06:04', 'stretch-planned', {
    stretch: stretchIds('cup').load,
    type: 'higher-carbohydrate days',
    from: '2027-04-30',
    until: '2027-05-01',
  });
  scribe.write('2027-03-01', '06:05', 'show-day-timed', {
    show: 'cup',
    wake: '05:30',
    stage: '13:00',
    checkIn: '09:00',
    travelMinutes: 40,
  });
  return { ledger: createLedger(scribe.entries), task };
}

describe('[CRS-27] the season as iCalendar', () => {
  it('[CRS-27] a general library reads every date back: days, moments, times of the clock, escaped text', () => {
    const { events, calendar } = read(writeCalendar(calendarOf(season().ledger, momentInZone)));
    const found = new Map(events.map((event) => [event.summary, event]));
    const show = found.get('Harbour Cup; the 9th, "spring"');
    expect(show?.location).toBe('Town hall,\nnorth door');
    expect([show?.startDate.isDate, show?.startDate.toString(), show?.endDate.toString()]).toEqual([
      true,
      '2027-05-02',
      '2027-05-03',
    ]);
    // 13:00 of 2 May in Auckland (UTC+12) is 01:00 UTC.
    const stage = found.get('Stage: Harbour Cup; the 9th, "spring"');
    expect(stage?.startDate.toJSDate().toISOString()).toBe('2027-05-02T01:00:00.000Z');
    const checkIn = found.get('Athlete check-in');
    expect(checkIn?.startDate.toJSDate().toISOString()).toBe('2027-05-01T04:00:00.000Z');
    const posing = found.get('Posing');
    expect([posing?.startDate.zone?.tzid, posing?.startDate.toString()]).toEqual([
      'floating',
      '2027-03-20T18:00:00',
    ]);
    expect(posing?.duration.toSeconds()).toBe(1800);
    const load = found.get('Carbohydrate loading');
    expect([load?.startDate.toString(), load?.endDate.toString()]).toEqual(['2027-04-30', '2027-05-02']);
    expect(events).toHaveLength(10);
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    // RFC 5545, 3.6 and 3.6.1: what a calendar and each event of it must have, once.
    for (const name of ['prodid', 'version']) expect(calendar.getAllProperties(name)).toHaveLength(1);
    for (const event of events)
      for (const name of ['uid', 'dtstamp', 'dtstart'])
        expect(event.component.getAllProperties(name)).toHaveLength(1);
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
  });

  it('[CRS-27] a corrected date keeps its id, so that another calendar moves it instead of doubling it', () => {
    const { ledger, task } = season();
    const uidOf = (title: string) =>
      calendarOf(ledger, momentInZone).find((date) => date.title === title)?.id;
    expect(uidOf('Posing')).toBe(task);
    const old = ledger.entry(task);
    if (!old) throw new Error('the task is gone');
    const [id, stamp] = [`${old.id.slice(0, -1)}Z`, `${old.stamp.slice(0, 1)}9${old.stamp.slice(2)}`];
    ledger.add([{ ...old, id, stamp, replaces: old.id, data: { ...old.data, title: 'Posing, evening' } }]);
    expect([uidOf('Posing'), uidOf('Posing, evening')]).toEqual([undefined, task]);
  });

  it('[CRS-27] lines end in CRLF and have at most 75 octets, whatever the text; it comes back whole', () => {
    const text = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 120 });
    fc.assert(
      fc.property(text, text, (title, says) => {
        const date: CalendarDate = {
          id: 'one',
          writtenMs: 0,
          title,
          says,
          category: 'other',
          time: { is: 'days', from: '2027-05-02', until: '2027-05-02' },
        };
        const written = writeCalendar([date]);
        for (const line of written.split('\r\n')) {
          expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
          expect(line).not.toMatch(/[\r\n]/);
        }
        const [event] = read(written).events;
        const plain = (words: string) => words.replaceAll(/\r\n?/g, '\n').replaceAll(/[^\P{Cc}\n\t]/gu, '');
        expect([event?.summary, event?.description]).toEqual([plain(title), plain(says)]);
      }),
      { seed: 27 },
    );
  });

  it('[CRS-27] the export stands in the list of formats, and writes the same bytes again', () => {
    const format = journalExports.find(({ name }) => name === 'ical');
    const { ledger } = season();
    const text = format?.write(ledger, {}) ?? '';
    expect(text).toContain('BEGIN:VEVENT\r\n');
    expect(format?.write(ledger, {})).toBe(text);
    expect(format?.fileEnding).toBe('ics');
    expect(format?.write(createLedger(), {})).toBe('');
  });
});
