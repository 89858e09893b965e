import { connect, createServer, type AddressInfo, type Socket } from 'node:net';

/** Where a connection is cut: behind so many bytes of what goes there (request) or comes back (answer). */
export interface Cut {
  readonly side: Side;
  readonly after: number;
}
export type Side = 'request' | 'answer';

export interface CuttingProxy {
  readonly address: string;
  /** What went through, both ways, until it was cut. */
  passed(side: Side): Buffer;
  /** Whether it came to the cut. */
  wasCut(): boolean;
  close(): Promise<void>;
}

/** A real socket between a device and a server, cut at one byte; without a cut it only listens. */
export async function cuttingProxy(port: number, cut?: Cut): Promise<CuttingProxy> {
  const bytes: Record<Side, Buffer[]> = { request: [], answer: [] };
  const sockets = new Set<Socket>();
  let [done, wasCut] = [0, false];
  const cutAll = (): void => {
    wasCut = true;
    for (const socket of sockets) socket.destroy();
  };
  const pass = (side: Side, chunk: Buffer, to: Socket): void => {
    if (wasCut) return;
    const part = side === cut?.side ? chunk.subarray(0, cut.after - done) : chunk;
    bytes[side].push(part);
    if (side === cut?.side) done += part.length;
    const reached = side === cut?.side && done === cut.after;
    to.write(part, () => reached && cutAll());
    // A socket that is gone already answers no write.
    if (reached && to.destroyed) cutAll();
  };
  const listener = createServer((client) => {
    const server = connect(port, '127.0.0.1');
    for (const socket of [client, server]) {
      sockets.add(socket);
      // A cut connection is what is wanted here; the other end says what it means to it.
      socket.on('error', () => undefined);
      socket.on('close', () => [client, server].forEach((end) => end.destroy()));
    }
    if (cut?.after === 0 && cut.side === 'request') cutAll();
    client.on('data', (chunk: Buffer) => pass('request', chunk, server));
    server.on('data', (chunk: Buffer) => {
      if (cut?.after === 0 && cut.side === 'answer') cutAll();
      else pass('answer', chunk, client);
    });
  });
  await new Promise<void>((resolve) => listener.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${portOf(listener.address())}/`,
    passed: (side) => Buffer.concat(bytes[side]),
    wasCut: () => wasCut,
    close: async () => {
      for (const socket of sockets) socket.destroy();
      await new Promise((resolve) => listener.close(resolve));
    },
  };
}

function portOf(address: AddressInfo | string | null): number {
  if (address === null || typeof address === 'string') throw new TypeError('it listens on no port');
  return address.port;
}
