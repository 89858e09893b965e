import { serve, type ServerType } from '@hono/node-server';
import type { Hono } from 'hono';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';

export interface Listening {
  /** Where to point a browser. */
  readonly address: string;
  readonly port: number;
  /** Answers what is under way, takes nothing new, and ends. */
  stop(): Promise<void>;
}

/** Limits of the socket: a flood or a request that dribbles in does not keep others out for long. */
export interface SocketLimits {
  readonly connections: number;
  /** The head of a request must be there after this long. */
  readonly headMs: number;
  /** The whole of it after this long. */
  readonly requestMs: number;
}
const LIMITS: SocketLimits = { connections: 1000, headMs: 15_000, requestMs: 120_000 };

/** How long a request under way may hold up the stop. */
const STOP_PATIENCE_MS = 3000;

/** Listens on this machine only. Port 0 takes any free one. */
export function listen(
  server: Hono,
  port: number,
  hostname = '127.0.0.1',
  limits = LIMITS,
): Promise<Outcome<Listening>> {
  return new Promise((resolve) => {
    const serverOptions = {
      headersTimeout: limits.headMs,
      requestTimeout: limits.requestMs,
      connectionsCheckingInterval: Math.min(limits.headMs, 5000),
    };
    const socket = serve({ fetch: server.fetch, port, hostname, serverOptions }, (bound) => {
      resolve(
        answered({
          address: `http://${hostname}:${bound.port}/`,
          port: bound.port,
          stop: () => stop(socket),
        }),
      );
    });
    socket.maxConnections = limits.connections;
    socket.on('error', (fault: NodeJS.ErrnoException) => resolve(cannotListen(fault, port)));
  });
}

function cannotListen(fault: NodeJS.ErrnoException, port: number): Outcome<Listening> {
  if (fault.code === 'EADDRINUSE') {
    return refused(
      'server/port-in-use',
      'port',
      `Port ${port} is already in use on this machine, perhaps by this server in another window.`,
      `Stop the other one, or choose another port: serve --port ${port + 1}.`,
    );
  }
  return refused(
    'server/cannot-listen',
    'port',
    `Port ${port} cannot be listened on (${fault.code ?? fault.message}).`,
    'Choose a port from 1024 to 65535 with --port.',
  );
}

function stop(socket: ServerType): Promise<void> {
  return new Promise((resolve) => {
    socket.close(() => resolve());
    if ('closeIdleConnections' in socket) socket.closeIdleConnections();
    setTimeout(() => {
      if ('closeAllConnections' in socket) socket.closeAllConnections();
    }, STOP_PATIENCE_MS).unref();
  });
}
