import { useEffect, useRef, useSyncExternalStore } from 'react';

/** What a key does: `p`, `?`, `ArrowDown`, `Ctrl+Enter`, or two in a row: `g b`. */
export type KeyMap = Readonly<Record<string, () => void>>;

const OFF = 'bagatelle-keys-off';
const SEQUENCE_MS = 1200;
const stack: { readonly map: KeyMap }[] = [];
const told = new Set<() => void>();
let begun: { key: string; at: number } | null = null;

/** Can single keys act? They can be switched off (WCAG 2.2, 2.1.4 Character Key Shortcuts). */
export function useKeysOn(): readonly [boolean, (on: boolean) => void] {
  const on = useSyncExternalStore(
    (listener) => {
      told.add(listener);
      return () => told.delete(listener);
    },
    () => localStorage.getItem(OFF) === null,
  );
  return [
    on,
    (wanted) => {
      if (wanted) localStorage.removeItem(OFF);
      else localStorage.setItem(OFF, '1');
      for (const listener of told) listener();
    },
  ];
}

/** Keys of a page or a panel while it stands; the newest one wins. `when` false: none. */
export function useKeys(map: KeyMap, when = true): void {
  const latest = useRef(map);
  // looked up at the press, so that a key always knows the newest state of its page
  useEffect(() => {
    latest.current = map;
  });
  useEffect(() => {
    if (!when) return undefined;
    const entry = {
      get map() {
        return latest.current;
      },
    };
    stack.push(entry);
    return () => void stack.splice(stack.indexOf(entry), 1);
  }, [when]);
}

const TYPED = new Set(['INPUT', 'TEXTAREA', 'SELECT']);

function inField(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement && ['radio', 'checkbox', 'button', 'submit'].includes(target.type)) return false;
  return TYPED.has(target.tagName) || target.isContentEditable;
}

/** Enter and the space bar on a link or a button press it, whatever else they may do on the page. */
function pressesIt(target: EventTarget | null, key: string): boolean {
  if (key !== 'Enter' && key !== ' ') return false;
  return target instanceof Element && target.closest('a[href], button, summary, input, [role=button]') !== null;
}

function nameOf(event: KeyboardEvent): string {
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  return event.ctrlKey || event.metaKey ? `Ctrl+${key}` : key;
}

/** Listens for the whole page; called once. */
export function listenForKeys(): void {
  addEventListener('keydown', (event) => {
    if (event.defaultPrevented || event.isComposing || event.altKey) return;
    const key = nameOf(event);
    const plain = key.length === 1;
    if (plain && (inField(event.target) || localStorage.getItem(OFF) !== null)) return;
    if (inField(event.target) && !key.startsWith('Ctrl+')) return;
    if (pressesIt(event.target, key)) return;
    if (document.querySelector('[role=dialog][aria-modal], dialog[open], [data-modal]')) return;
    const both = begun && Date.now() - begun.at < SEQUENCE_MS ? `${begun.key} ${key}` : null;
    begun = null;
    const act = (both && find(both)) || find(key);
    if (act) {
      event.preventDefault();
      act();
    } else if (plain && startsOne(key)) begun = { key, at: Date.now() };
  });
}

function find(key: string): (() => void) | undefined {
  return stack.toReversed().find(({ map }) => map[key])?.map[key];
}

function startsOne(key: string): boolean {
  return stack.some(({ map }) => Object.keys(map).some((name) => name.startsWith(`${key} `)));
}
