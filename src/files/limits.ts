/** What a table may be at most; above it, it is no table that a person keeps. */
export const LIMITS = {
  /** bytes of a file */
  fileBytes: 64 * 1024 * 1024,
  /** cells of a row */
  columns: 1000,
  /** characters of a cell: three times what a spreadsheet holds */
  cellLength: 100_000,
  /** physical lines that one quoted cell may span */
  quotedLines: 500,
} as const;
