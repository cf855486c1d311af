import type { ReadRow } from '#core/bom/bom.ts';
import { readJson } from '#core/bom/read-json.ts';
import { doubtText } from '#say/en/doubts.ts';

/** A row as every face shows it: the `read` contract, with the doubts in words. */
export function tellRow(row: ReadRow): object {
  return readJson(row, doubtText);
}
