/** What stands after the `?` of an address is text, always: bag 100 and the words "100" are written alike. */
export function readWords(search: string): Record<string, string> {
  return Object.fromEntries(new URLSearchParams(search));
}

export function writeWords(words: Record<string, unknown>): string {
  const written = new URLSearchParams();
  for (const [name, value] of Object.entries(words)) if (typeof value === 'string' && value !== '') written.set(name, value);
  return written.size ? `?${written}` : '';
}

/** Only the words that a page knows. */
export function pickWords<Name extends string>(
  ...names: readonly Name[]
): (search: Record<string, unknown>) => { [K in Name]?: string } {
  return (search) => {
    const found: { [K in Name]?: string } = {};
    for (const name of names) {
      const value = search[name];
      if (typeof value === 'string' && value !== '') found[name] = value;
    }
    return found;
  };
}

/** `'12'` → 12; what is no whole number from `least` to `most` is null. */
export function wholeWord(word: string | undefined, least = 1, most = 999_999_999): number | null {
  if (word === undefined || !/^\d{1,9}$/.test(word)) return null;
  const number = Number(word);
  return number >= least && number <= most ? number : null;
}

/** Words that an answer changes: only where none of these was changed while it was awaited. */
export function unlessMoved<W extends object>(now: W, before: W, names: readonly (keyof W)[], then: (now: W) => W): W {
  return names.every((name) => now[name] === before[name]) ? then(now) : now;
}
