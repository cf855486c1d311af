type Args = Readonly<Record<string, string | number>>;

/** What the server says at its door, before any act. */
const WIRE = {
  'wire-host': ({ host }: Args) =>
    `This lab does not answer to the name '${host}'. Open it by the address that 'bagatelle serve' printed.`,
  'wire-origin': ({ origin }: Args) => `A page of '${origin}' may not change this lab. Open the lab by its own address.`,
  'wire-type': ({ received, expected }: Args) => `The content type '${received}' is not taken here; send ${expected}.`,
  'wire-json': () => 'The body is not JSON that can be read. Send one JSON object.',
  'wire-field': ({ field, expected }: Args) => `The field '${field}' is not right: it must be ${expected}.`,
  'wire-too-large': ({ path }: Args) => `What was sent to ${path} is larger than this lab takes at once. Split it.`,
  'wire-address-too-long': () =>
    'This address is longer than any that the lab has. Was it cut or pasted wrongly? Start from the page of the lab.',
  'wire-other-lab': () => 'Another lab stands here now; load the page again.',
  'wire-no-such-page': ({ path }: Args) => `There is nothing at ${path}. /api/openapi.json lists what there is.`,
  'wire-method': ({ method, path, allowed }: Args) => `${path} does not take ${method}, only ${allowed}.`,
  'wire-change-ahead': ({ asked, have }: Args) =>
    `Change ${asked} has not been made in this lab; the last one is ${have}. Was a backup restored? Load the page anew.`,
  'wire-not-paired': () =>
    'This device is not paired with the lab. Open Devices at the machine that serves the lab, and scan the code that it shows.',
  'wire-here-only': () => 'That is done at the machine that serves the lab, under its own address there.',
  'wire-not-lan': () => 'Other devices can not reach this lab. Close it, and start it with: bagatelle serve --lan',
  'wire-no-network': () => 'This machine has no address in a network. Join one, then try again.',
  'wire-code': () =>
    'This code is not known here: it was used, or is older than ten minutes, or is mistyped. Ask for a new one at the machine that serves the lab.',
  'wire-too-many-tries': ({ seconds }: Args) => `Too many wrong codes came from here. Try again in ${seconds} seconds.`,
  'wire-name-taken': ({ name }: Args) =>
    `A device is called '${name}' already. Give this one another name, or forget that one first.`,
  'wire-no-such-device': () => 'There is no such device, or it was forgotten already.',
  'wire-fault': () => 'This is a fault of Bagatelle, not of what you sent. The server has logged it; nothing half done was kept.',
} as const;

export function wireText(code: keyof typeof WIRE, args: Args): string {
  return WIRE[code](args);
}

/** What the address shows where the pages were not built. */
export const NO_PAGES =
  'The pages are not built. Run `npm start`, or `node scripts/bootstrap.mjs --web`. The interface for programs is at /api/openapi.json.';
