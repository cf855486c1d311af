import { createAdaptorServer } from '@hono/node-server';
import { Server } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface Listening {
  readonly url: string;
  readonly port: number;
  /** ends the open requests, then the server */
  readonly stop: () => Promise<void>;
}

export type ListenFault = { readonly fault: 'port-taken' | 'port-refused' | 'no-such-address'; readonly message: string };

const FAULTS: Readonly<Record<string, ListenFault['fault']>> = {
  EADDRINUSE: 'port-taken',
  EACCES: 'port-refused',
  EADDRNOTAVAIL: 'no-such-address',
  ENOTFOUND: 'no-such-address',
};
const STOP_MS = 5000;

interface Where {
  readonly host: string;
  readonly port: number;
}

/** Listens on one address; a port that is taken is a fault to tell, not a throw. */
export function listen(
  fetch: (request: Request) => Response | Promise<Response>,
  where: Where,
): Promise<Listening | ListenFault> {
  const server = createAdaptorServer({ fetch, serverOptions: { requestTimeout: 120_000, headersTimeout: 20_000 } });
  if (!(server instanceof Server)) throw new Error('the adaptor made another kind of server');
  return new Promise((settle, fail) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      const fault = FAULTS[error.code ?? ''];
      if (fault) settle({ fault, message: error.message });
      else fail(error);
    });
    server.listen(where.port, where.host, () => {
      const { port, family, address } = server.address() as AddressInfo; // as: a TCP server that listens has one
      const name = family === 'IPv6' ? `[${address}]` : address;
      settle({ url: `http://${name}:${port}/`, port, stop: () => stop(server) });
    });
  });
}

function stop(server: Server): Promise<void> {
  return new Promise((stopped) => {
    const hurry = setTimeout(() => server.closeAllConnections(), STOP_MS);
    server.close(() => {
      clearTimeout(hurry);
      stopped();
    });
    server.closeIdleConnections();
  });
}
