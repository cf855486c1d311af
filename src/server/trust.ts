import { getConnInfo } from '@hono/node-server/conninfo';
import type { Context, MiddlewareHandler } from 'hono';
import { noteSeen, tokenHash } from '#actions/devices.ts';
import { readDeviceOf, type Device } from '#db/devices.ts';
import { isHere } from './here.ts';
import { givePass, readPass } from './pass.ts';
import { problem } from './problem.ts';
import type { Caller, Served } from './served.ts';

/** Lets through who is at this machine and who is paired; anybody else may load the page and pair, and nothing else. */
export function trustGuard(served: Served): MiddlewareHandler {
  return async (c, next) => {
    const caller = await whoCalls(c, served);
    c.set('caller', caller);
    if (caller.here || caller.device || isOpenToAll(c)) return next();
    c.header('www-authenticate', 'Pairing');
    return problem(c, 'wire-not-paired');
  };
}

function isOpenToAll(c: Context): boolean {
  const { method, path } = c.req;
  if (method === 'POST') return path === '/api/pair';
  return (method === 'GET' || method === 'HEAD') && !/^\/+api(?:\/|$)/i.test(path);
}

async function whoCalls(c: Context, served: Served): Promise<Caller> {
  const address = addressOf(c);
  const here = isHere({
    remoteAddress: address,
    host: c.req.header('host') ?? '',
    header: (name) => c.req.header(name),
  });
  return { here, device: here ? null : await deviceOf(c, served), address: address ?? '' };
}

/** Of the socket; undefined where the request came by none, which is never trusted. */
function addressOf(c: Context): string | undefined {
  const env: unknown = c.env;
  if (typeof env !== 'object' || env === null || !('incoming' in env)) return undefined;
  return getConnInfo(c).remote.address;
}

/** Looked up by the hash, so that how long it takes says nothing of the token. */
async function deviceOf(c: Context, { lab, clock }: Served): Promise<Device | null> {
  const token = readPass(c);
  if (token === null) return null;
  const device = await lab.read((tx) => readDeviceOf(tx, tokenHash(token)));
  if (!device) return null;
  if (device.seen?.slice(0, 10) !== clock.now().slice(0, 10)) givePass(c, token);
  await noteSeen(lab, clock, device);
  return device;
}
