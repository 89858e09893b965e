import { answered, type Outcome } from '#core/problems/problem.ts';
import { cutShort, massOf, UNSUCCESSFUL, unsuccessful, type ScaleReading } from './scale-reading.ts';

/** Flags of Weight Measurement (0x2A9D); source: Bluetooth SIG, Weight Scale Service 1.0 and GATT Specification Supplement (layout from memory). */
const FLAG = { imperial: 0x01, time: 0x02, user: 0x04, indexAndHeight: 0x08 } as const;
const TIME_BYTES = 7;

/**
 * Reads a Weight Measurement (SCL-01): flags, then the weight as an unsigned 16-bit number, least byte first, then what the
 * flags announce. Time, user and height of the scale are passed over: the journal has its own.
 */
export function readWeightMeasurement(bytes: DataView): Outcome<ScaleReading> {
  const flags = bytes.byteLength > 0 ? bytes.getUint8(0) : 0;
  const has = (flag: number) => (flags & flag) !== 0;
  const needed =
    3 + (has(FLAG.time) ? TIME_BYTES : 0) + (has(FLAG.user) ? 1 : 0) + (has(FLAG.indexAndHeight) ? 4 : 0);
  if (bytes.byteLength < needed) return cutShort(bytes, needed);
  const steps = bytes.getUint16(1, true);
  return steps === UNSUCCESSFUL ? unsuccessful() : answered({ massKg: massOf(steps, has(FLAG.imperial)) });
}
