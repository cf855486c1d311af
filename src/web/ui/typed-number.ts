import { useRef } from 'react';
import type { KeyMap } from './key-acts.ts';

const TOGETHER_MS = 1500;
const FIGURES = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9'];

/** Keys of the figures: 1, 6, 3 in a row say 1, 16 and 163, as a list jumps while its number is typed. */
export function useTypedNumber(onNumber: (number: number) => void): KeyMap {
  const typed = useRef({ text: '', at: 0 });
  const press = (figure: string): void => {
    const now = Date.now();
    const before = now - typed.current.at < TOGETHER_MS ? typed.current.text : '';
    const text = `${before}${figure}`.slice(-9);
    typed.current = { text, at: now };
    onNumber(Number(text));
  };
  return Object.fromEntries(FIGURES.map((figure) => [figure, () => press(figure)]));
}
