import type { Invite } from '#api/devices.ts';
import type { Served } from './served.ts';

/** An invitation for one device, with the address that its camera reads; null where this machine is in no network. */
export async function makeInvite({ network, invites }: Pick<Served, 'network' | 'invites'>): Promise<Invite | null> {
  const [lab] = network?.urls() ?? [];
  if (lab === undefined) return null;
  const { code, until } = invites.make();
  const url = `${lab}pair?code=${code}`;
  const { qrSquares } = await import('#files/qr.ts'); // a large package, which most starts never need
  return { url, code, until: new Date(until).toISOString(), squares: qrSquares(url) };
}
