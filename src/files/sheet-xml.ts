import { SaxesParser } from 'saxes';
import { fault, type PlainRow, type PlainTable, type Read } from './plain.ts';

/** characters given to the parser at once, so that a bad file stops early */
const PIECE = 65_536;

/** Whether the text is an XML spreadsheet (the 2003 format of workbooks in one XML file). */
export function isSheetXml(text: string): boolean {
  return /^\s*<(\?xml|Workbook\b|ss:Workbook\b)/.test(text) && /<(\w+:)?Workbook\b/.test(text);
}

/**
 * Tables of an XML spreadsheet, one a worksheet; a row has the line of its row element.
 * A document type is refused: with it come entities that blow up or read other files.
 */
export function readSheetXml(text: string): Read<PlainTable[]> {
  const tables: PlainTable[] = [];
  const parser = new SaxesParser();
  let problem: string | null = null;
  let rows: PlainRow[] = [];
  let title = '';
  let cells: string[] | null = null;
  let line = 0;
  const lineAt = lineCounter(text);
  let data: string | null = null;
  parser.on('doctype', () => {
    problem ??= 'it declares a document type';
  });
  parser.on('error', (error) => {
    problem ??= error.message.replace(/^undefined:/, '');
  });
  parser.on('opentagstart', (tag) => {
    if (local(tag.name) === 'Row') line = lineAt(text.lastIndexOf('<', parser.position - 1));
  });
  parser.on('opentag', (tag) => {
    const name = local(tag.name);
    if (name === 'Worksheet') {
      rows = [];
      title = attribute(tag.attributes, 'Name');
    } else if (name === 'Row') cells = [];
    else if (name === 'Cell' && cells) {
      const index = Number(attribute(tag.attributes, 'Index'));
      while (index > cells.length + 1 && cells.length < 20_000) cells.push('');
      cells.push('');
    } else if (name === 'Data' && cells && cells.length > 0) data = '';
  });
  parser.on('text', (piece) => {
    if (data !== null) data += piece;
  });
  parser.on('cdata', (piece) => {
    if (data !== null) data += piece;
  });
  parser.on('closetag', (tag) => {
    const name = local(tag.name);
    if (name === 'Data' && data !== null && cells) {
      cells[cells.length - 1] = data;
      data = null;
    } else if (name === 'Row' && cells) {
      rows.push({ row: line, cells });
      cells = null;
    } else if (name === 'Worksheet' && rows.length > 0)
      tables.push({
        form: 'sheet',
        titles: /^(sheet|tabelle|feuil|hoja|foglio|blad|ark)\s*\d*$/i.test(title) ? [] : [title],
        headed: false,
        rows,
      });
  });
  for (let at = 0; at < text.length; at += PIECE) {
    parser.write(text.slice(at, at + PIECE));
    if (problem !== null) break;
  }
  if (problem === null) parser.close();
  return problem === null
    ? { ok: true, value: tables }
    : fault('file-no-table', { why: `the XML can't be read: ${String(problem)}` });
}

/** Line of a place in the text, for places that only go up: every line end is passed once. */
function lineCounter(text: string): (place: number) => number {
  let line = 1;
  let at = text.indexOf('\n');
  return (place) => {
    while (at >= 0 && at < place) {
      line += 1;
      at = text.indexOf('\n', at + 1);
    }
    return line;
  };
}

function local(name: string): string {
  return name.slice(name.indexOf(':') + 1);
}

function attribute(attributes: Readonly<Record<string, unknown>>, name: string): string {
  const key = Object.keys(attributes).find((full) => local(full) === name);
  const value = key === undefined ? '' : attributes[key];
  return typeof value === 'string' ? value : '';
}
