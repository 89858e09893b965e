import { connect, createServer, type AddressInfo, type Socket } from 'node:net';

/** Where a connection is cut: behind so many bytes of what goes there (request) or comes back (answer); 0: at the first. */
export interface Cut {
  readonly side: Side;
  readonly after: number;
}
export type Side = 'request' | 'answer';

export interface CuttingProxy {
  readonly address: string;
  /** From now on counts what passes and cuts there; then nobody gets through until it is mended. */
  cutAt(cut: Cut): void;
  mend(): void;
  /** What went through since, both ways. */
  passed(side: Side): Buffer;
  /** Whether it came to the cut. */
  wasCut(): boolean;
  close(): Promise<void>;
}

/** A real socket between a device and a server, which can be cut at one byte. */
export async function cuttingProxy(port: number): Promise<CuttingProxy> {
  const sockets = new Set<Socket>();
  let cut: Cut | undefined;
  let [bytes, wasCut] = [nothingYet(), false];
  const cutAll = (): void => {
    wasCut = true;
    for (const socket of sockets) socket.destroy();
  };
  const pass = (side: Side, chunk: Buffer, to: Socket): void => {
    if (wasCut) return;
    const left = side === cut?.side ? cut.after - lengthOf(bytes[side]) : Number.POSITIVE_INFINITY;
    const part = chunk.subarray(0, left);
    bytes[side].push(part);
    to.write(part, () => {
      if (chunk.length >= left) cutAll();
    });
  };
  const listener = createServer((client) => {
    const server = connect(port, '127.0.0.1');
    for (const socket of [client, server]) {
      sockets.add(socket);
      // A cut connection is what is wanted here; the other end says what it means to it.
      socket.on('error', () => undefined);
      socket.on('close', () => {
        for (const end of [client, server]) end.destroy();
      });
    }
    client.on('data', (chunk: Buffer) => pass('request', chunk, server));
    server.on('data', (chunk: Buffer) => pass('answer', chunk, client));
    if (wasCut) client.destroy();
  });
  await new Promise<void>((resolve) => listener.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${portOf(listener.address())}/`,
    cutAt: (at) => {
      [cut, bytes, wasCut] = [at, nothingYet(), false];
    },
    mend: () => {
      [cut, bytes, wasCut] = [undefined, nothingYet(), false];
    },
    passed: (side) => Buffer.concat(bytes[side]),
    wasCut: () => wasCut,
    close: async () => {
      for (const socket of sockets) socket.destroy();
      await new Promise((resolve) => listener.close(resolve));
    },
  };
}

function nothingYet(): Record<Side, Buffer[]> {
  return { request: [], answer: [] };
}

function lengthOf(parts: readonly Buffer[]): number {
  return parts.reduce((sum, part) => sum + part.length, 0);
}

function portOf(address: AddressInfo | string | null): number {
  if (address === null || typeof address === 'string') throw new TypeError('it listens on no port');
  return address.port;
}
