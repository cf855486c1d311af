import { readPart } from '#core/part/read-part.ts';
import type { ReadRow } from './bom.ts';
import { headingsThatTell } from './headings.ts';
import { readItemText } from './item-text.ts';
import type { PlainTable } from './plain-table.ts';

/** longer lines are sentences about something */
const LONGEST = 80;

/** Lines of a list in words: those with a count, with references, or of a kind that is known; the rest is prose. */
export function readItems(table: PlainTable): ReadRow[] {
  const context = headingsThatTell(table.titles).join(', ');
  return table.rows.flatMap(({ row, cells }): ReadRow[] => {
    const item = readItemText(cells[0] ?? '');
    if (!/\p{L}/u.test(item.text) && item.refs.length === 0) return [];
    const { part, doubts } = readPart(item.text, {
      refs: item.refs,
      fields: { description: item.text, ...(context ? { context } : {}) },
    });
    if (item.quantity === null && item.refs.length === 0 && (part.kind === 'other' || item.text.length > LONGEST)) return [];
    return [
      {
        row,
        refs: item.refs,
        quantity: item.quantity,
        fitted: true,
        part,
        location: null,
        supplier: null,
        doubts: [...item.doubts, ...doubts],
      },
    ];
  });
}
