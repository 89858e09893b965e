import { describe, expect, it } from 'vitest';
import { readBodyComposition } from './body-composition.ts';
import { connectScale, hasBluetooth } from './connect-scale.ts';
import { readWeightMeasurement } from './weight-measurement.ts';

/*
 * Bytes written by hand from the field lists of Bluetooth SIG's Weight Scale Service 1.0 and Body Composition Service 1.0 (GATT Specification
 * Supplement, characteristics 0x2A9D and 0x2A9C); the lists are from memory.
 */
const view = (...bytes: number[]) => new DataView(Uint8Array.from(bytes).buffer);
const massOf = (reading: ReturnType<typeof readWeightMeasurement>) =>
  reading.ok ? reading.value.massKg : reading.problem.code;

describe('a weight measurement', () => {
  it.each([
    ['70 kg are 14000 steps of 5 g', [0x00, 0xb0, 0x36], 70],
    ['1.235 kg in a bowl are 247 steps', [0x00, 0xf7, 0x00], 1.235],
    ['154.32 lb are 15432 steps of 0.01 lb', [0x01, 0x48, 0x3c], 69.998],
    [
      'time, user, index and height follow the weight',
      [0x0e, 0x98, 0x3f, 0xeb, 0x07, 0x03, 0x04, 0x06, 0x1e, 0x00, 0x01, 0xf3, 0x00, 0x26, 0x07],
      81.4,
    ],
    ['0xFFFF is a measurement that did not come about', [0x00, 0xff, 0xff], 'scale/unsuccessful'],
    ['announced time that is not there', [0x02, 0xb0, 0x36, 0xeb], 'scale/cut-short'],
    ['nothing at all', [], 'scale/cut-short'],
  ])('[SCL-01] %s', (_, bytes, expected) => {
    expect(massOf(readWeightMeasurement(view(...bytes)))).toBe(expected);
  });
});

describe('a body composition measurement', () => {
  it.each([
    ['fat alone', [0x00, 0x00, 0xb8, 0x00], { bodyFatPercent: 18.4 }],
    ['fat and weight', [0x00, 0x04, 0xb8, 0x00, 0xb0, 0x36], { bodyFatPercent: 18.4, massKg: 70 }],
    [
      'weight behind time, user, basal metabolism and impedance',
      [
        0x0e, 0x06, 0xb8, 0x00, 0xeb, 0x07, 0x03, 0x04, 0x06, 0x1e, 0x00, 0x01, 0x40, 0x1a, 0x88, 0x13, 0xb0,
        0x36,
      ],
      { bodyFatPercent: 18.4, massKg: 70 },
    ],
    ['in pounds', [0x01, 0x04, 0xb8, 0x00, 0x48, 0x3c], { bodyFatPercent: 18.4, massKg: 69.998 }],
  ])('[SCL-02] %s', (_, bytes, expected) => {
    const reading = readBodyComposition(view(...bytes));
    expect(reading.ok && reading.value).toEqual(expected);
  });

  it.each([
    ['0xFFFF', [0x00, 0x00, 0xff, 0xff], 'scale/unsuccessful'],
    ['an announced weight that is not there', [0x00, 0x04, 0xb8, 0x00, 0xb0], 'scale/cut-short'],
    ['half a head', [0x00], 'scale/cut-short'],
  ])('[SCL-02] says so of %s', (_, bytes, code) => {
    const reading = readBodyComposition(view(...bytes));
    expect(!reading.ok && reading.problem.code).toBe(code);
  });
});

class Notified extends EventTarget {
  value?: DataView;
  startNotifications = () => Promise.resolve();
  send(...bytes: number[]): void {
    this.value = view(...bytes);
    this.dispatchEvent(new Event('characteristicvaluechanged'));
  }
}

function browserWith(characteristic: Notified, service: number) {
  const missing = () => Promise.reject(new DOMException('no such service', 'NotFoundError'));
  const server = {
    getPrimaryService: (asked: number) =>
      asked === service
        ? Promise.resolve({ getCharacteristic: () => Promise.resolve(characteristic) })
        : missing(),
  };
  const device = Object.assign(new EventTarget(), {
    name: 'Bench scale',
    gatt: { connect: () => Promise.resolve(server), disconnect: () => undefined },
  });
  return { bluetooth: { requestDevice: () => Promise.resolve(device) } };
}

describe('a scale that is connected', () => {
  it('[SCL-03] is heard through the service it has', async () => {
    const characteristic = new Notified();
    const readings: unknown[] = [];
    const connected = await connectScale(browserWith(characteristic, 0x18_1d), {
      onReading: (reading) => readings.push(reading.ok ? reading.value : reading.problem.code),
      onGone: () => undefined,
    });
    expect(connected.ok && connected.value.name).toBe('Bench scale');
    characteristic.send(0x00, 0xf7, 0x00);
    characteristic.send(0x00, 0xff, 0xff);
    expect(readings).toEqual([{ massKg: 1.235 }, 'scale/unsuccessful']);
  });

  it('[SCL-03] is said where the browser, the choice or the service is missing', async () => {
    const silent = { onReading: () => undefined, onGone: () => undefined };
    expect(hasBluetooth({})).toBe(false);
    const refusals = await Promise.all([
      connectScale({}, silent),
      connectScale(browserWith(new Notified(), 0x18_0f), silent),
      connectScale(
        {
          bluetooth: { requestDevice: () => Promise.reject(new DOMException('cancelled', 'NotFoundError')) },
        },
        silent,
      ),
    ]);
    expect(refusals.map((one) => !one.ok && one.problem.code)).toEqual(Array(3).fill('scale/not-connected'));
  });
});
