import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { readBodyComposition } from './body-composition.ts';
import type { ScaleReading } from './scale-reading.ts';
import { readWeightMeasurement } from './weight-measurement.ts';

/** Numbers assigned by the Bluetooth SIG. */
const SERVICES = [
  { service: 0x18_1d, measurement: 0x2a_9d, read: readWeightMeasurement },
  { service: 0x18_1b, measurement: 0x2a_9c, read: readBodyComposition },
] as const;

/** What of Web Bluetooth is used here; the browser's own types do not have it. */
interface Characteristic extends EventTarget {
  readonly value?: DataView;
  startNotifications(): Promise<unknown>;
}
interface Server {
  getPrimaryService(service: number): Promise<{ getCharacteristic(number: number): Promise<Characteristic> }>;
}
interface Device extends EventTarget {
  readonly name?: string;
  readonly gatt?: { connect(): Promise<Server>; disconnect(): void };
}
interface Bluetooth {
  requestDevice(options: object): Promise<Device>;
}

export interface ScaleListener {
  readonly onReading: (reading: Outcome<ScaleReading>) => void;
  readonly onGone: () => void;
}

export interface ConnectedScale {
  readonly name: string;
  readonly disconnect: () => void;
}

function isBluetooth(value: unknown): value is Bluetooth {
  return typeof value === 'object' && value !== null && 'requestDevice' in value;
}

function bluetoothOf(browser: object): Bluetooth | undefined {
  const found: unknown = Reflect.get(browser, 'bluetooth');
  return isBluetooth(found) ? found : undefined;
}

/** Whether this browser can talk to a scale at all (SCL-03). */
export function hasBluetooth(browser: object): boolean {
  return bluetoothOf(browser) !== undefined;
}

/** Lets the person choose a scale and hears its measurements until it is let go or goes away. */
export async function connectScale(
  browser: object,
  listener: ScaleListener,
): Promise<Outcome<ConnectedScale>> {
  const bluetooth = bluetoothOf(browser);
  if (!bluetooth) return noScale('This browser does not talk to Bluetooth devices.');
  try {
    const device = await bluetooth.requestDevice({
      filters: SERVICES.map(({ service }) => ({ services: [service] })),
      optionalServices: SERVICES.map(({ service }) => service),
    });
    const server = await device.gatt?.connect();
    if (!server) return noScale('The scale did not open a connection.');
    const heard = await listen(server, listener);
    if (heard === 0) {
      device.gatt?.disconnect();
      return noScale('The scale offers none of the public measurements.');
    }
    device.addEventListener('gattserverdisconnected', listener.onGone);
    return answered({ name: device.name ?? 'scale', disconnect: () => device.gatt?.disconnect() });
  } catch (fault) {
    // A choice not made, a radio switched off, a scale out of reach; anything else is a fault of ours.
    if (fault instanceof DOMException) return noScale(`No scale was connected: ${fault.message}`);
    throw fault;
  }
}

/** Subscribes to every measurement that the scale has. */
async function listen(server: Server, { onReading }: ScaleListener): Promise<number> {
  let heard = 0;
  for (const { service, measurement, read } of SERVICES) {
    const characteristic = await offered(server, service, measurement);
    if (!characteristic) continue;
    characteristic.addEventListener('characteristicvaluechanged', () => {
      if (characteristic.value) onReading(read(characteristic.value));
    });
    await characteristic.startNotifications();
    heard += 1;
  }
  return heard;
}

async function offered(
  server: Server,
  service: number,
  measurement: number,
): Promise<Characteristic | undefined> {
  try {
    return await (await server.getPrimaryService(service)).getCharacteristic(measurement);
  } catch (fault) {
    // A body scale may have one service without the other.
    if (fault instanceof DOMException && fault.name === 'NotFoundError') return undefined;
    throw fault;
  }
}

function noScale(message: string): Outcome<never> {
  return refused(
    'scale/not-connected',
    'scale',
    message,
    'Wake the scale and try again, or type the weight.',
  );
}
