interface Held {
  bag: number;
  onHand: number;
  free: number;
}

const left = (onHand: number, free: number): string => `${onHand} on hand, ${free} free.`;
const signed = (difference: number): string => (difference > 0 ? `+${difference}` : `−${-difference}`);

/** What the command line says about itself; sentences about stock are in the other files of this folder. */
const CLI = {
  'unknown-command': ({ command, near }: { command: string; near: string }) =>
    `There is no command '${command}'.${near ? ` Did you mean '${near}'?` : ''} 'bagatelle help' lists them all.`,
  'unknown-option': ({ option, near }: { option: string; near: string }) =>
    `There is no option ${option} here.${near ? ` Did you mean ${near}?` : ''}`,
  'option-takes-nothing': ({ option, value }: { option: string; value: string }) => `${option} is a switch and takes no value, but got '${value}'.`,
  'option-wants-value': ({ option, value }: { option: string; value: string }) => `${option} wants a value after it: ${option} ${value}`,
  'words-missing': ({ what }: { what: string }) => `Something is missing: ${what}.`,
  'words-too-many': ({ word }: { word: string }) => `Don't know what '${word}' is for here.`,
  usage: ({ usage, name }: { usage: string; name: string }) => `Usage: ${usage}   (more: bagatelle ${name} --help)`,
  fault: ({ error }: { error: string }) =>
    `This is a fault of Bagatelle, not of your input: ${error}\nNothing half done was kept. Please report it with the command you ran; BAGATELLE_DEBUG=1 shows the details to add.`,
  'head-usage': () => 'Usage',
  'head-options': () => 'Options',
  'head-example': () => 'Example',
  'help-option': () => 'this help',
  intro: () => 'Bagatelle keeps the consumables of a small electronics lab: numbered bags, BOMs turned into kits, quantities that stay honest.',
  'help-more': () => "'bagatelle COMMAND --help' shows how one is used, with an example.",
  'help-ends': () => 'Exit status: 0 done · 1 could not, nothing changed · 2 wrong usage. Data goes to stdout, messages to stderr; --json gives JSON Lines.',
  'help-home': ({ home }: { home: string }) => `Data folder: ${home} (BAGATELLE_HOME says another; DATABASE_URL a PostgreSQL).`,
  'did-repeat': () => 'This was done before under the same id; nothing was done twice.',
  picked: ({ bag, quantity, corrected, onHand, free }: Held & { quantity: number; corrected: number }) =>
    `Picked ${quantity} from bag ${bag}${corrected ? ` (${corrected} more than the record knew; it is on the count list)` : ''}. ${left(onHand, free)}`,
  returned: ({ bag, quantity, onHand, free }: Held & { quantity: number }) => `Returned ${quantity} to bag ${bag}. ${left(onHand, free)}`,
  counted: ({ bag, total, difference, onHand, free }: Held & { total: number; difference: number }) =>
    `Counted ${total} in bag ${bag}${difference === 0 ? ', as the record said' : ` (${signed(difference)})`}. ${left(onHand, free)}`,
  received: ({ bag, onHand, free }: Held) => `Bag ${bag}: ${left(onHand, free)}`,
  'one-line-for-bag': () => '--bag names one bag, so it goes with one line.',
  'nothing-found': ({ words }: { words: string }) => `No bag answers '${words}'.`,
  'set-aside': ({ bag, state, before }: { bag: number; state: string; before: string }) => `Bag ${bag} is ${state} now (was ${before}).`,
  undone: ({ kind, bags }: { kind: string; bags: string }) => `Taken back: ${kind}.${bags ? ` Bags ${bags}.` : ''}`,
  'bag-head': ({ bag, code, text, box, place, state }: { bag: number; code: string; text: string; box: string | null; place: string | null; state: string }) =>
    `Bag ${bag}  ${code}  ${text === code ? '' : text}\n${box === null ? 'no box' : `box ${box}`}${place === null ? '' : `, place ${place}`}${state === 'sound' ? '' : `, ${state}`}`,
  'bag-holds': ({ onHand, sure, reserved, free, toCount }: { onHand: number; sure: number; reserved: number; free: number; toCount: boolean }) =>
    `${onHand} on hand${sure < onHand ? `, ${sure} of them sure` : ''}, ${reserved} reserved, ${free} free${toCount ? '. To be counted.' : ''}`,
  serving: ({ url }: { url: string }) => `The lab is open at ${url}   (Ctrl+C closes it)`,
  stopped: () => 'The lab is closed.',
  'serve-network': ({ host }: { host: string }) =>
    `--host ${host} would let others on the network read and change this lab, and there is no sign-in yet. Add --let-the-network-in if that is what you want.`,
  'serve-open-network': ({ host }: { host: string }) =>
    `Careful: everybody who reaches ${host} can read and change this lab. Sign-in will come with a later version.`,
  'serve-fault': ({ fault, host, port }: { fault: 'port-taken' | 'port-refused' | 'no-such-address'; host: string; port: number }) =>
    ({
      'port-taken': `Port ${port} is taken by another program, perhaps by a lab that is open already. Close that one, or choose another: bagatelle serve --port ${port + 1}`,
      'port-refused': `This account may not listen on port ${port}. Choose one above 1023: bagatelle serve --port 4242`,
      'no-such-address': `'${host}' is no address of this machine. Leave --host out to keep the lab to this machine.`,
    })[fault],
  act: ({ act }: { act: string }) => `Act ${act}. Take it back with: bagatelle undo ${act}`,
} as const;

type Texts = typeof CLI;

/** The sentence of a code, with its arguments. */
export function cliText<K extends keyof Texts>(code: K, ...args: Parameters<Texts[K]>): string {
  // as: the arguments are typed by the code on the way in; the union of functions can't be called as such
  return (CLI[code] as (...args: readonly unknown[]) => string)(...args);
}
