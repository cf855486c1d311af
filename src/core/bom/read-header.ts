import type { Kind } from '#core/part/part.ts';
import type { ColumnRole } from './columns.ts';
import { HEADER_WORDS } from './header-words.data.ts';

/** A meaning that a header may have; `strength` 1 where its whole text is a known word, less where only a part of it is. */
export interface HeaderMeaning {
  readonly role: ColumnRole;
  readonly strength: number;
  /** the word has other meanings too: the cells must show this one */
  readonly maybe?: true;
}

interface Meaning {
  readonly role: ColumnRole;
  readonly maybe: boolean;
}

const LETTERS: Readonly<Record<string, string>> = { ß: 'ss', æ: 'ae', œ: 'oe', ø: 'o', ł: 'l', đ: 'd', ı: 'i' };

const MEANINGS: ReadonlyMap<string, readonly Meaning[]> = ((): Map<string, Meaning[]> => {
  const map = new Map<string, Meaning[]>();
  for (const [role, words, weight] of HEADER_WORDS) {
    for (const word of words.split('|').map(normaliseHeader))
      map.set(word, [...(map.get(word) ?? []), { role, maybe: weight === 'maybe' }]);
  }
  return map;
})();

/** Words that mean something only as the whole header: in longer ones they say nothing. */
const WHOLE_ONLY = new Set([
  'part',
  'parts',
  'name',
  'number',
  'num',
  'no',
  'nr',
  'id',
  'item',
  'items',
  'type',
  'typ',
  'art',
  'x',
  'y',
  'ar',
  'db',
  'ks',
  'nb',
  'from',
  'what',
  'where',
  'min',
  'max',
  'code',
  'each',
  'web',
  'file',
  'n p',
  'io',
  'if',
  'tc',
  'pd',
  'vr',
  'ort',
  'rep',
  'total',
  'units',
  'unit',
  'date',
  'place',
  'fit',
  'load',
  'mount',
  'montage',
  'ersatz',
  'alt',
  'bak',
  'dose',
  'pose',
  'value',
  'component',
  'components',
  'product',
  'vendor',
  'spec',
  'assembly',
  'material',
  'position',
  'status',
  'stock',
  'side',
  'qt',
  'pos',
  'model',
  'device',
  'standard',
  'pins',
  'label',
]);

/** Header text as it is looked up: lower case, no accents, punctuation as single blanks, the parenthesis apart. */
export function normaliseHeader(header: string): string {
  return header
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[ßæœøłđı]/g, (letter) => LETTERS[letter] ?? letter)
    .replace(/#/g, ' no ')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** What a header may mean, likeliest first: `Qté` → quantity; `Mfr. Part #` → partNumber; `#` → quantity or index. */
export function headerMeanings(header: string): HeaderMeaning[] {
  if (header.trim() === '#')
    return [
      { role: 'quantity', strength: 0.6 },
      { role: 'index', strength: 0.6 },
    ];
  if (header.trim().length > 60) return [];
  const whole = normaliseHeader(header);
  if (!whole) return [];
  const bare = normaliseHeader(header.replace(/[([][^)\]]*[)\]]/g, ' '));
  const exact =
    MEANINGS.get(whole) ??
    MEANINGS.get(whole.replace(/ no$/, '')) ??
    MEANINGS.get(bare) ??
    MEANINGS.get(whole.replace(/^(\d+|no) | \d+$/g, ''));
  if (exact)
    return exact.map(({ role, maybe }, order) => ({
      role,
      strength: 1 - order * 0.05 + (saysMaker(whole) && role === 'partNumber' ? 0.2 : 0),
      ...(maybe ? { maybe } : {}),
    }));
  const inside = partMeanings(bare || whole);
  return inside.length ? inside : misspelt(bare || whole);
}

/** letters of a word in which one wrong letter leaves no doubt what was meant */
const LONG_WORD = 8;

/** A long word with one letter wrong, missing or too many: `Designater` → refs. */
function misspelt(word: string): HeaderMeaning[] {
  if (word.length < LONG_WORD || !/^\p{L}+$/u.test(word)) return [];
  for (const [known, meanings] of MEANINGS) {
    if (Math.abs(known.length - word.length) <= 1 && known.length >= LONG_WORD && isOneOff(known, word))
      return meanings.map(({ role, maybe }) => ({ role, strength: 0.8, ...(maybe ? { maybe } : {}) }));
  }
  return [];
}

function isOneOff(a: string, b: string): boolean {
  let same = 0;
  while (same < a.length && a[same] === b[same]) same += 1;
  const [restA, restB] = [a.slice(same), b.slice(same)];
  return restA.slice(1) === restB.slice(1) || restA.slice(1) === restB || restA === restB.slice(1);
}

/** A header that speaks of the maker, not of a shop. */
function saysMaker(text: string): boolean {
  return /\b(?:manuf|mf|mfg|mfr|manf|maker|mpn|hersteller|fabri[ck]ant)/.test(text);
}

/** The longest known phrases inside a longer header; a later phrase outweighs an earlier one, as heads of noun phrases do. */
function partMeanings(text: string): HeaderMeaning[] {
  const words = text.split(' ');
  const supplierNumber = /\b(pn|p n|part|no|number|sku|nr|id|stock code)\b/.test(text) && !saysMaker(text) && words.length > 1;
  if (/\b(price|cost|preis|prix|precio|usd|eur|stock price)\b/.test(text)) return [{ role: 'price', strength: 0.9 }];
  for (let size = words.length - 1; size > 0; size -= 1) {
    for (let at = words.length - size; at >= 0; at -= 1) {
      const phrase = words.slice(at, at + size).join(' ');
      const roles = WHOLE_ONLY.has(phrase) ? undefined : MEANINGS.get(phrase);
      if (!roles) continue;
      const made = roles.map(({ role }, order) => ({ role, strength: 0.6 - order * 0.05 }));
      return supplierNumber && made.some(({ role }) => role === 'partNumber')
        ? [{ role: 'supplierNumber', strength: 0.9 }, ...made]
        : made;
    }
  }
  return supplierNumber && /\b(pn|p n|part no|part number|sku|part)\b/.test(text)
    ? [{ role: 'supplierNumber', strength: 0.6 }]
    : [];
}

/** How many cells of a row are words of a header, those known only in part counting half: the sign of a header row. Numbers and long texts are none. */
export function countHeaderWords(cells: readonly string[]): number {
  const seen = new Map<string, number>();
  for (const cell of cells) {
    const text = cell.trim();
    if (!text || text.length > 40 || /^[\d.,%-]+$/.test(text)) continue;
    const best = headerMeanings(text)[0];
    if (best && best.strength >= 0.55) seen.set(normaliseHeader(text), best.strength > 0.9 ? 1 : 0.5);
  }
  return Math.floor([...seen.values()].reduce((sum, weight) => sum + weight, 0));
}

const HEADER_UNITS: Readonly<Record<string, string>> = {
  ohm: 'ohm',
  ohms: 'ohm',
  ω: 'ohm',
  kohm: 'kohm',
  kω: 'kohm',
  v: 'V',
  volt: 'V',
  volts: 'V',
  vdc: 'V',
  kv: 'kV',
  w: 'W',
  watt: 'W',
  watts: 'W',
  mw: 'mW',
  a: 'A',
  ma: 'mA',
  amps: 'A',
  pf: 'pF',
  nf: 'nF',
  uf: 'uF',
  µf: 'uF',
  μf: 'uF',
  mf: 'mF',
  f: 'F',
  ph: 'pH',
  nh: 'nH',
  uh: 'uH',
  µh: 'uH',
  μh: 'uH',
  mh: 'mH',
  h: 'H',
  hz: 'Hz',
  khz: 'kHz',
  mhz: 'MHz',
  '%': '%',
};

const KINDS_BY_WORD: readonly (readonly [RegExp, Kind, string])[] = [
  [/\b(resistance|resistenza|resistencia|widerstand(swert)?|ohms?|weerstand)\b/, 'resistor', 'ohm'],
  [/\b(capacitance|capacit\w*|kapazit\w*|capacidad|capacite)\b/, 'capacitor', ''],
  [/\b(inductance|induktivit\w*|inductancia|induttanza)\b/, 'inductor', ''],
  [/\b(vz(typ|nom)?|zener voltage)\b/, 'zener', 'V'],
];

/** The unit in a header's brackets or at its end, and the kind that its word implies: `Capacitance (uF)` → uF, capacitor. */
export function headerFacts(header: string): { unit?: string; kind?: Kind } {
  const inside =
    /[([]\s*([^)\]\s]+)\s*[)\]]/.exec(header)?.[1] ??
    /(?:\bin|\/)\s+?(\S+)\s*$/i.exec(header)?.[1] ??
    (header.trim().endsWith('%') ? '%' : undefined);
  const unit = inside === undefined ? undefined : HEADER_UNITS[inside.toLowerCase()];
  const found = KINDS_BY_WORD.find(([word]) => word.test(normaliseHeader(header)));
  const said = unit ?? (found?.[2] || undefined);
  return { ...(said ? { unit: said } : {}), ...(found ? { kind: found[1] } : {}) };
}
