const LOOPBACK_NAMES: ReadonlySet<string> = new Set(['localhost', '127.0.0.1', '[::1]']);
/** What a program that stands between adds: whoever asked it is somewhere else. */
const PASSED_ON = ['forwarded', 'x-forwarded-for', 'x-real-ip', 'via'] as const;

export interface Asking {
  /** of the other end of the socket itself, never of a header */
  readonly remoteAddress: string | undefined;
  readonly host: string;
  readonly header: (name: string) => string | undefined;
}

/** `'127.0.0.1:4242'` -> `127.0.0.1`; `'[::1]:80'` -> `[::1]`. */
export function hostName(host: string): string {
  return host.replace(/:\d+$/, '').toLowerCase();
}

export function isLoopbackName(host: string): boolean {
  return LOOPBACK_NAMES.has(hostName(host));
}

function isLoopbackAddress(address: string): boolean {
  const plain = address.replace(/^::ffff:/i, '');
  return plain === '::1' || /^127(?:\.\d{1,3}){3}$/.test(plain);
}

/** Whether who asks sits at the machine that serves the lab: by its socket and by the name that it used, both; a doubt is a no. */
export function isHere({ remoteAddress, host, header }: Asking): boolean {
  if (remoteAddress === undefined || !isLoopbackAddress(remoteAddress)) return false;
  return isLoopbackName(host) && PASSED_ON.every((name) => header(name) === undefined);
}
