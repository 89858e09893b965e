import { answered, type Outcome } from '#core/problems/problem.ts';
import { roundTo } from '#core/units/rounding.ts';
import { cutShort, massOf, UNSUCCESSFUL, unsuccessful, type ScaleReading } from './scale-reading.ts';

/**
 * Fields of Body Composition Measurement (0x2A9C) after flags and body fat, in their order, each with its flag bit and bytes: time, user,
 * basal metabolism, muscle percentage, muscle mass, fat-free mass, soft lean mass, body water, impedance, weight. Source: Bluetooth SIG,
 * Body Composition Service 1.0 and GATT Specification Supplement (layout from memory).
 */
const BEFORE_WEIGHT = [
  [0x0002, 7],
  [0x0004, 1],
  [0x0008, 2],
  [0x0010, 2],
  [0x0020, 2],
  [0x0040, 2],
  [0x0080, 2],
  [0x0100, 2],
  [0x0200, 2],
] as const;
const IMPERIAL = 0x0001;
const WEIGHT = 0x0400;
const HEAD_BYTES = 4;

/** Reads a Body Composition Measurement (SCL-02): body fat in tenths of a percent, and the weight where the flags announce it. */
export function readBodyComposition(bytes: DataView): Outcome<ScaleReading> {
  if (bytes.byteLength < HEAD_BYTES) return cutShort(bytes, HEAD_BYTES);
  const flags = bytes.getUint16(0, true);
  const fat = bytes.getUint16(2, true);
  if (fat === UNSUCCESSFUL) return unsuccessful();
  const bodyFatPercent = roundTo(fat / 10, 1);
  if ((flags & WEIGHT) === 0) return answered({ bodyFatPercent });
  const at = BEFORE_WEIGHT.reduce((sum, [flag, size]) => sum + ((flags & flag) === 0 ? 0 : size), HEAD_BYTES);
  if (bytes.byteLength < at + 2) return cutShort(bytes, at + 2);
  return answered({ bodyFatPercent, massKg: massOf(bytes.getUint16(at, true), (flags & IMPERIAL) !== 0) });
}
