/** What is to know of a file as a whole, by the code of the reader. */
const NOTES: Readonly<
  Record<'encoding-guessed' | 'several-tables', (args: Readonly<Record<string, string | number>>) => string>
> = {
  'encoding-guessed': ({ taken }) => `The file does not say its encoding; it was read as ${taken}.`,
  'several-tables': ({ tables }) => `It holds ${tables} tables; the columns are those of the largest.`,
};

export function sayFileNote(note: {
  readonly code: keyof typeof NOTES;
  readonly args: Readonly<Record<string, string | number>>;
}): string {
  return NOTES[note.code](note.args);
}
