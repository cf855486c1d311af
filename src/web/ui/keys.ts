import { useEffect, useRef, useSyncExternalStore } from 'react';
import { answerKey, type Begun, type KeyMap, type Press } from './key-acts.ts';

const OFF = 'bagatelle-keys-off';
const stack: { readonly map: KeyMap }[] = [];
const told = new Set<() => void>();
let begun: Begun | null = null;

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

function fieldOf(target: EventTarget | null): Press['field'] {
  if (!(target instanceof HTMLElement)) return 'none';
  if (target instanceof HTMLInputElement && ['radio', 'checkbox', 'button', 'submit'].includes(target.type)) return 'none';
  if (target.tagName === 'TEXTAREA' || target.isContentEditable) return 'text';
  return TYPED.has(target.tagName) ? 'line' : 'none';
}

const isPressed = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('a[href], button, summary, input, [role=button]') !== null;

/** Listens for the whole page; called once. */
export function listenForKeys(): void {
  addEventListener('keydown', (event) => {
    if (event.defaultPrevented || event.isComposing || event.altKey) return;
    if (document.querySelector('[role=dialog][aria-modal], dialog[open], [data-modal]')) return;
    const { key, ctrlKey, metaKey, repeat, target } = event;
    const press = { key, ctrlKey, metaKey, repeat, at: Date.now(), field: fieldOf(target), presses: isPressed(target) };
    const maps = stack.map(({ map }) => map);
    const answer = answerKey(press, maps, begun, localStorage.getItem(OFF) === null);
    begun = answer.begun;
    if (answer.prevent) event.preventDefault();
    answer.act?.();
  });
}
