import type { Context } from 'hono';
import { getCookie, setCookie } from 'hono/cookie';

/** Browsers keep a cookie for 400 days at most; each day on which the device comes it is given anew. */
const LASTS_S = 400 * 24 * 60 * 60;

/** A cookie knows no port: two labs on one machine must not take each other's. */
function nameOf(c: Context): string {
  const port = /:(\d+)$/.exec(c.req.header('host') ?? '')?.[1] ?? '80';
  return `bagatelle-device-${port}`;
}

/** The token that a device sends; null where it sends none. */
export function readPass(c: Context): string | null {
  return getCookie(c, nameOf(c)) ?? null;
}

/** Hands a token to the device, out of reach of any script and of other sites. Not `Secure`, since the lab speaks plain http. */
export function givePass(c: Context, token: string): void {
  setCookie(c, nameOf(c), token, { path: '/', httpOnly: true, sameSite: 'Strict', maxAge: LASTS_S });
}

export function takePass(c: Context): void {
  setCookie(c, nameOf(c), '', { path: '/', httpOnly: true, sameSite: 'Strict', maxAge: 0 });
}
