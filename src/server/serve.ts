import { createAdaptorServer } from '@hono/node-server';
import { Server } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface Listening {
  readonly url: string;
  readonly port: number;
  /** ends the open requests, then the server */
  readonly stop: () => Promise<void>;
}

export type ListenFault = { readonly fault: 'port-taken' | 'port-refused'; readonly message: string };

const FAULTS: Readonly<Record<string, ListenFault['fault']>> = {
  EADDRINUSE: 'port-taken',
  EACCES: 'port-refused',
};
const STOP_MS = 5000;

const HERE = '127.0.0.1';
/** IPv4 alone: by IPv6 a machine of a home is often reached from the whole internet. */
const EVERYWHERE = '0.0.0.0';

export interface Where {
  readonly port: number;
  /** open to the network, not to this machine alone */
  readonly lan: boolean;
}

/** What answers a request; `env` tells of the socket that it came by. */
type Answers = (request: Request, env: object) => Response | Promise<Response>;

/** Listens; a port that is taken is a fault to tell, not a throw. `url` is the address at this machine. */
export function listen(fetch: Answers, where: Where): Promise<Listening | ListenFault> {
  const server = createAdaptorServer({ fetch, serverOptions: { requestTimeout: 120_000, headersTimeout: 20_000 } });
  if (!(server instanceof Server)) throw new Error('the adaptor made another kind of server');
  return new Promise((settle, fail) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      const fault = FAULTS[error.code ?? ''];
      if (fault) settle({ fault, message: error.message });
      else fail(error);
    });
    server.listen(where.port, where.lan ? EVERYWHERE : HERE, () => {
      const { port } = server.address() as AddressInfo; // as: a TCP server that listens has one
      settle({ url: `http://${HERE}:${port}/`, port, stop: () => stop(server) });
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
