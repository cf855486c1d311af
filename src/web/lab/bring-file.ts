import type { DraftView } from '#api/drafts.ts';
import { address, ask } from './ask.ts';

/** Endings of names that a list or a BOM may have; whether it is a table its bytes decide. */
export const TABLES = ['.csv', '.tsv', '.tab', '.txt', '.md'] as const;
/** Endings of a lab's backup. */
export const BACKUPS = ['.jsonl', '.json'] as const;

export type FileIs = 'table' | 'backup' | 'neither';

/** What a file that was dropped anywhere may be, by its name: `parts.csv` → table; `lab.jsonl` → backup; a name without an ending → table. */
export function fileIs(name: string): FileIs {
  const ending = /\.[^.]+$/.exec(name.toLowerCase())?.[0];
  if (ending === undefined || TABLES.some((one) => one === ending)) return 'table';
  return BACKUPS.some((one) => one === ending) ? 'backup' : 'neither';
}

/** Has a file read as a list or a BOM; nothing of it is kept as stock or board. The same id again answers the same draft. */
export function bringFile(file: File, is: 'list' | 'bom', id: string): Promise<DraftView> {
  return ask<DraftView>(address('/api/drafts', { name: file.name, is, id }), { method: 'POST', body: file });
}
