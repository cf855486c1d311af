import { decodeText } from './decode-text.ts';
import { readDelimited } from './delimited.ts';
import { detectDelimiter, separatorHint } from './detect-delimiter.ts';
import { LIMITS } from './limits.ts';
import { hasMarkdownTable, isMarkdownList, readMarkdown } from './markdown.ts';
import { fault, type CountHeaderWords, type PlainFile, type PlainTable, type Read } from './plain.ts';
import { isSheetXml, readSheetXml } from './sheet-xml.ts';
import { isWideHeader, readTextLines } from './text-lines.ts';

/**
 * Bytes of a file to its plain tables: delimited, Markdown, columns of characters, lists in text, XML spreadsheet.
 * `countHeaderWords` says how many cells of a row are words of a header. Never throws: what can't be read is a fault.
 */
export function readTables(bytes: Uint8Array, countHeaderWords: CountHeaderWords): Read<PlainFile> {
  if (bytes.length > LIMITS.fileBytes) return fault('file-too-large', { size: bytes.length, most: LIMITS.fileBytes });
  const decoded = decodeText(bytes);
  if (!decoded.ok) return decoded;
  const { text, encoding, guessed } = decoded.value;
  const tables = tablesOf(text, countHeaderWords);
  if (!tables.ok) return tables;
  const broken = overLimit(tables.value);
  return broken ?? { ok: true, value: { tables: tables.value, encoding, encodingGuessed: guessed } };
}

function tablesOf(text: string, countHeaderWords: CountHeaderWords): Read<PlainTable[]> {
  if (isSheetXml(text)) return readSheetXml(text);
  if (/^\s*<(\?xml|!doctype|html|svg)/i.test(text))
    return fault('file-no-table', { why: 'it is a page or a tree of XML, not a table' });
  if (/^\s*[[{][\s\S]*[\]}]\s*$/.test(text.slice(0, 200) + text.slice(-50)))
    return fault('file-no-table', { why: 'it looks like JSON' });
  const lines = text.split('\n');
  if (hasMarkdownTable(lines)) return { ok: true, value: readMarkdown(lines) };
  const hint = separatorHint(lines[0] ?? '');
  if (hint) return { ok: true, value: [delimitedTable(lines, hint, 1)] };
  const found = detectDelimiter(lines, countHeaderWords);
  const wide = Math.max(
    0,
    ...lines
      .slice(0, 200)
      .map((line) =>
        !line.includes('\t') && isWideHeader(line, countHeaderWords) ? countHeaderWords(line.trim().split(/\s{2,}/)) : 0,
      ),
  );
  if (found && found.headerWords >= wide) return { ok: true, value: [delimitedTable(lines, found.delimiter, 0)] };
  return { ok: true, value: isMarkdownList(lines) ? readMarkdown(lines) : readTextLines(lines, countHeaderWords) };
}

function delimitedTable(lines: readonly string[], delimiter: string, first: number): PlainTable {
  const rows = readDelimited(lines, delimiter, first).filter((row) => row.cells.some((cell) => cell.trim() !== ''));
  return { form: 'delimited', titles: [], headed: false, rows };
}

function overLimit(tables: readonly PlainTable[]): Read<never> | null {
  for (const { rows } of tables) {
    for (const { row, cells } of rows) {
      if (cells.length > LIMITS.columns) return fault('too-many-columns', { row, column: cells.length, most: LIMITS.columns });
      const long = cells.findIndex((cell) => cell.length > LIMITS.cellLength);
      if (long >= 0)
        return fault('cell-too-long', { row, column: long + 1, length: (cells[long] ?? '').length, most: LIMITS.cellLength });
    }
  }
  return null;
}
