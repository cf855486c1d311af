import type { PlainRow, PlainTable } from './plain.ts';

const SEPARATOR = /^(?:[|+]\s*)?:?[-=]{2,}:?\s*(?:[|+]\s*:?[-=]+:?\s*)*[|+]?$/;
const HEADING = /^ {0,3}(#{1,6})\s+(\S.*)$/;
/** in a text longer than this, marks of emphasis and links are left as they are: it is no cell that a person wrote */
const LONGEST_MARKED = 2_000;
const BULLET = /^\s*(?:[-*+•]|\d+[.)])\s+(?:\[[ xX]\]\s+)?(.*)$/;

/** Whether the lines hold a Markdown table: a row of dashes and bars (or plus signs) under a row with a bar. */
export function hasMarkdownTable(lines: readonly string[]): boolean {
  return lines.some((_, at) => isTableStart(lines, at));
}

/** Whether the lines are Markdown without a table: a heading and a list. */
export function isMarkdownList(lines: readonly string[]): boolean {
  return lines.some((line) => HEADING.test(line)) && lines.filter((line) => /^\s*[-*+]\s+\S/.test(line)).length > 1;
}

function isTableStart(lines: readonly string[], at: number): boolean {
  const below = lines[at + 1] ?? '';
  return (lines[at] ?? '').includes('|') && /[|+]/.test(below) && SEPARATOR.test(below.trim());
}

/** All tables and lists of a Markdown text, each with the headings over it; a lone first-level heading is the title of the text, not of a table. */
export function readMarkdown(lines: readonly string[]): PlainTable[] {
  const tables: PlainTable[] = [];
  const lone = lines.filter((line) => /^ {0,3}#\s/.test(line)).length < 2;
  let headings: string[] = [];
  let items: PlainRow[] = [];
  const endItems = (): void => {
    if (items.length > 0) tables.push({ form: 'items', titles: titlesOf(headings), headed: false, rows: items });
    items = [];
  };
  for (let at = frontMatterEnd(lines); at < lines.length; at += 1) {
    const heading = headingAt(lines, at);
    if (heading) {
      endItems();
      headings = headings.slice(0, heading.level - 1);
      headings[heading.level - 1] = lone && heading.level === 1 ? '' : plainText(heading.text);
    } else if (isTableStart(lines, at)) {
      endItems();
      const rows = tableRows(lines, at);
      tables.push({ form: 'markdown', titles: titlesOf(headings), headed: true, rows });
      at = (rows.at(-1)?.row ?? at + 2) - 1;
      if (rows.length === 1) at += 1;
    } else {
      const bullet = BULLET.exec(lines[at] ?? '');
      if (bullet) items.push({ row: at + 1, cells: [plainText(bullet[1] ?? '')] });
    }
  }
  endItems();
  return tables;
}

function titlesOf(headings: readonly string[]): string[] {
  return headings.filter(Boolean);
}

/** YAML between two lines of dashes at the very start is about the text, not in it. */
function frontMatterEnd(lines: readonly string[]): number {
  if ((lines[0] ?? '').trim() !== '---') return 0;
  const end = lines.findIndex((line, at) => at > 0 && line.trim() === '---');
  return end < 0 ? 0 : end + 1;
}

function headingAt(lines: readonly string[], at: number): { level: number; text: string } | null {
  const match = HEADING.exec(lines[at] ?? '');
  if (match) return { level: (match[1] ?? '').length, text: (match[2] ?? '').trimEnd().replace(/\s#+$/, '') };
  const below = lines[at + 1] ?? '';
  const line = (lines[at] ?? '').trim();
  if (!line || line.includes('|') || !/^(={3,}|-{3,})\s*$/.test(below)) return null;
  return { level: below.startsWith('=') ? 1 : 2, text: line };
}

/** Header and rows from a table's first line on; lines of dashes are left out. */
function tableRows(lines: readonly string[], start: number): PlainRow[] {
  const rows: PlainRow[] = [{ row: start + 1, cells: cutBars(lines[start] ?? '') }];
  for (let at = start + 2; at < lines.length && /^\s*\+[-=+]+\s*$|\|/.test(lines[at] ?? ''); at += 1) {
    if (!SEPARATOR.test((lines[at] ?? '').trim())) rows.push({ row: at + 1, cells: cutBars(lines[at] ?? '') });
  }
  return rows;
}

/** Cells between bars; the outer bars are optional, `\|` is a bar in a cell, as is one between backticks. */
export function cutBars(line: string): string[] {
  const cells: string[] = [];
  let cell = '';
  let code = false;
  const text = line.trim();
  for (let at = 0; at < text.length; at += 1) {
    const char = text[at] ?? '';
    if (char === '\\' && text[at + 1] === '|') {
      cell += '|';
      at += 1;
    } else if (char === '|' && !code) {
      cells.push(plainText(cell));
      cell = '';
    } else {
      if (char === '`') code = !code;
      cell += char;
    }
  }
  if (cell.trim() || !text.endsWith('|')) cells.push(plainText(cell));
  return text.startsWith('|') ? cells.slice(1) : cells;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&nbsp;': ' ',
  '&quot;': '"',
  '&micro;': 'µ',
  '&Omega;': 'Ω',
  '&ohm;': 'Ω',
  '&deg;': '°',
  '&plusmn;': '±',
  '&#956;': 'μ',
  '&#181;': 'µ',
  '&#937;': 'Ω',
};

/** Markdown in a line to what is read: `[10 k](https://…)` → `10 k`, `**R1**` → `R1`. */
export function plainText(text: string): string {
  if (text.length > LONGEST_MARKED) return text.trim();
  return text
    .replace(/!?\[([^\][]*)\]\([^)]*\)/g, '$1')
    .replace(/<br\s*\/?>/gi, ' ')
    .replace(/<\/?[a-z][^>]*>/gi, '')
    .replace(/(\*\*|__)(.+?)\1/g, '$2')
    .replace(/(^|\s)[*_](\S.*?\S|\S)[*_](?=\s|$)/g, '$1$2')
    .replaceAll('`', '')
    .replace(/&#?\w+;/g, (entity) => ENTITIES[entity] ?? entity)
    .trim();
}
