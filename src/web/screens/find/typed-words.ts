import { useEffect, useRef, useState } from 'react';

/** How long after a key the address follows; browsers refuse more than a hundred changes of it in ten seconds. */
const FOLLOW_MS = 150;
/** So many moves of the address may be on their way at once. */
const ON_THE_WAY = 4;

interface Typed {
  readonly text: string;
  /** the address' words that this page brought about; any other came from outside, and wins */
  readonly ours: readonly string[];
}

/** What stands in the field at once, and in the address a moment later; Back and links change the field. */
export function useTypedWords(words: string, follow: (words: string) => void): readonly [string, (text: string) => void] {
  const [typed, setTyped] = useState<Typed>({ text: words, ours: [words] });
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);
  if (!typed.ours.includes(words)) setTyped({ text: words, ours: [words] });
  else if (typed.ours[0] === words && typed.ours.length > 1) setTyped({ ...typed, ours: [words] });
  const type = (text: string): void => {
    setTyped((before) => ({ ...before, text }));
    clearTimeout(timer.current);
    timer.current = setTimeout(() => {
      setTyped((before) => ({ ...before, ours: [text, ...before.ours].slice(0, ON_THE_WAY) }));
      follow(text);
    }, FOLLOW_MS);
  };
  return [typed.text, type];
}
