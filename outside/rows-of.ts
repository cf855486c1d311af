import { readFileSync } from 'node:fs';

/** Cells of a published table that lies in the `data` folder beside a check, without its heading; no cell holds a comma. */
export function rowsOf(check: string, name: string): string[][] {
  const text = readFileSync(new URL(`./data/${name}.csv`, check), 'utf8').trim();
  return text
    .split(/\r?\n/)
    .slice(1)
    .map((line) => line.split(','));
}
