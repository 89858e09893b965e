import { describe, expect, it } from 'vitest';
import { cityOf, momentInZone, offsetInZone, zonesNamed } from './time-zones.ts';

describe('[CRS-26] clocks of a place', () => {
  // Offsets as the IANA time zone database has them for these dates (from memory of its rules).
  it.each([
    ['Europe/Lisbon', '2027-03-04T12:00:00Z', 0],
    ['Europe/Lisbon', '2027-05-01T12:00:00Z', 60],
    ['Pacific/Kiritimati', '2027-05-01T12:00:00Z', 840],
    ['Pacific/Honolulu', '2027-05-01T12:00:00Z', -600],
    ['Asia/Kathmandu', '2027-05-01T12:00:00Z', 345],
    ['America/St_Johns', '2027-01-15T12:00:00Z', -210],
  ])('[CRS-26] %s at %s stands %i minutes ahead', (zone, at, minutes) => {
    expect(offsetInZone(zone, Date.parse(at))).toBe(minutes);
  });

  it('[CRS-26] a local time becomes its moment, on either side of a change of the clocks', () => {
    expect(new Date(momentInZone('Europe/Lisbon', '2027-03-27', 780) ?? 0).toISOString()).toBe(
      '2027-03-27T13:00:00.000Z',
    );
    expect(new Date(momentInZone('Europe/Lisbon', '2027-03-28', 780) ?? 0).toISOString()).toBe(
      '2027-03-28T12:00:00.000Z',
    );
    expect(new Date(momentInZone('Pacific/Auckland', '2027-05-02', 0) ?? 0).toISOString()).toBe(
      '2027-05-01T12:00:00.000Z',
    );
  });

  it('[CRS-26] a zone is found by its city; a name that is none has no clock', () => {
    expect(zonesNamed('auck')[0]).toBe('Pacific/Auckland');
    expect(zonesNamed('port mor')[0]).toBe('Pacific/Port_Moresby');
    expect(zonesNamed(' ')).toEqual([]);
    expect(cityOf('America/Argentina/Buenos_Aires')).toBe('Buenos Aires');
    expect([offsetInZone('Nowhere/Atall', 0), momentInZone('Nowhere/Atall', '2027-05-01', 0)]).toEqual([
      undefined,
      undefined,
    ]);
  });
});
