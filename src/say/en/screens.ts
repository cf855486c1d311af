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
  'wire-no-such-page': ({ path }: Args) => `There is nothing at ${path}. /api/openapi.json lists what there is.`,
  'wire-method': ({ method, path, allowed }: Args) => `${path} does not take ${method}, only ${allowed}.`,
  'wire-change-ahead': ({ asked, have }: Args) =>
    `Change ${asked} has not been made in this lab; the last one is ${have}. Was a backup restored? Load the page anew.`,
  'wire-fault': () => 'This is a fault of Bagatelle, not of what you sent. The server has logged it; nothing half done was kept.',
} as const;

export function wireText(code: keyof typeof WIRE, args: Args): string {
  return WIRE[code](args);
}

/** What the address shows where the pages were not built. */
export const NO_PAGES =
  'The pages are not built. Run `npm start`, or `node scripts/bootstrap.mjs --web`. The interface for programs is at /api/openapi.json.';
