import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { readShape } from './from-issues.ts';
import { clock, date, integerIn, numberIn } from './shapes.ts';

const schema = v.strictObject({
  grams: numberIn(0, 5, 'grams'),
  day: v.optional(date),
  at: v.optional(clock),
  count: v.optional(integerIn(1, 2)),
  rules: v.optional(v.picklist(['us', 'eu'])),
  parts: v.optional(v.array(v.strictObject({ grams: numberIn(0, 5, 'grams') }))),
});

function problemOf(input: unknown) {
  const outcome = readShape(schema, input, 'room');
  return outcome.ok ? undefined : outcome.problem;
}

describe('reading a shape', () => {
  it('[GND-00] answers the value when it fits', () => {
    expect(readShape(schema, { grams: 3 }, 'room')).toEqual({ ok: true, value: { grams: 3 } });
  });

  it.each([
    [{ grams: 9 }, 'room/wrong-value', 'grams', '"grams" is 9.', 'Make it grams from 0 to 5.'],
    [{ grams: '3' }, 'room/wrong-value', 'grams', '"grams" is "3".', 'Make it grams from 0 to 5.'],
    [{ grams: Number.NaN }, 'room/wrong-value', 'grams', '"grams" is NaN.', 'Make it grams from 0 to 5.'],
    [{}, 'room/missing-field', 'grams', '"grams" is missing.', 'Add "grams".'],
    [
      { gramms: 3 },
      'room/unknown-field',
      'gramms',
      '"gramms" is not a field that is known here.',
      'Remove it or correct its spelling.',
    ],
    [
      { grams: 1, day: '2027-02-29' },
      'room/wrong-value',
      'day',
      '"day" is "2027-02-29".',
      'Make it a date "YYYY-MM-DD" that is in the calendar.',
    ],
    [
      { grams: 1, rules: 'xx' },
      'room/wrong-value',
      'rules',
      '"rules" is "xx".',
      'Make it one of "us", "eu".',
    ],
    [{ grams: 1, parts: {} }, 'room/wrong-value', 'parts', '"parts" is an object.', 'Make it a list.'],
    [
      { grams: 1, parts: [{ grams: 9 }] },
      'room/wrong-value',
      'parts.0.grams',
      '"parts.0.grams" is 9.',
      'Make it grams from 0 to 5.',
    ],
    [[], 'room/wrong-value', '', 'The request is a list.', 'Make it an object.'],
    [7, 'room/wrong-value', '', 'The request is 7.', 'Make it an object.'],
  ])('[GND-00] names the field and the remedy: %j', (input, code, path, message, remedy) => {
    expect(problemOf(input)).toEqual({ code, path, message, remedy });
  });
});
