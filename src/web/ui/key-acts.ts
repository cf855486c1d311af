/** What a key does: `p`, `?`, `ArrowDown`, `Ctrl+Enter`, or two in a row: `g b`. */
export type KeyMap = Readonly<Record<string, () => void>>;

/** A key that was pressed, and where. */
export interface Press {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  /** it is held down, and the keyboard says it again */
  readonly repeat: boolean;
  readonly at: number;
  /** in a field of one line, or in one where Enter begins a new line */
  readonly field: 'none' | 'line' | 'text';
  /** Enter and the space bar press what it is on, whatever else they may do on the page */
  readonly presses: boolean;
}

/** The first key of two in a row. */
export interface Begun {
  readonly key: string;
  readonly at: number;
}

interface KeyAnswer {
  readonly act: (() => void) | null;
  readonly begun: Begun | null;
  /** the browser is not to do its own */
  readonly prevent: boolean;
}

const SEQUENCE_MS = 1200;

/** What a pressed key does on the page. `maps`: the newest last; `on`: single keys are not switched off. */
export function answerKey(press: Press, maps: readonly KeyMap[], begun: Begun | null, on: boolean): KeyAnswer {
  const key = nameOf(press);
  if (press.repeat && !key.startsWith('Arrow')) return { act: null, begun, prevent: isHeldBack(press, key, maps, on) };
  if (!mayAct(press, key, on)) return { act: null, begun, prevent: false };
  const both = begun && press.at - begun.at < SEQUENCE_MS ? `${begun.key} ${key}` : null;
  const act = (both === null ? null : find(maps, both)) ?? find(maps, key);
  if (act) return { act, begun: null, prevent: true };
  return { act: null, begun: key.length === 1 && startsOne(maps, key) ? { key, at: press.at } : null, prevent: false };
}

/** A held key books nothing a second time: neither by its own name nor by pressing a button or sending a form again. */
function isHeldBack(press: Press, key: string, maps: readonly KeyMap[], on: boolean): boolean {
  if (key === 'Enter' && (press.presses || press.field === 'line')) return true;
  return mayAct(press, key, on) && find(maps, key) !== null;
}

function mayAct(press: Press, key: string, on: boolean): boolean {
  if (key.length === 1 && !on) return false;
  if (press.field !== 'none' && !key.startsWith('Ctrl+')) return false;
  return !(press.presses && (key === 'Enter' || key === ' '));
}

function nameOf({ key, ctrlKey, metaKey }: Press): string {
  const name = key.length === 1 ? key.toLowerCase() : key;
  return ctrlKey || metaKey ? `Ctrl+${name}` : name;
}

function find(maps: readonly KeyMap[], key: string): (() => void) | null {
  return maps.findLast((map) => map[key])?.[key] ?? null;
}

function startsOne(maps: readonly KeyMap[], key: string): boolean {
  return maps.some((map) => Object.keys(map).some((name) => name.startsWith(`${key} `)));
}
