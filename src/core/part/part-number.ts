import type { Atom } from './atoms.ts';
import { withoutPackage, type Cell } from './cell.ts';
import { related } from './decide-kind.ts';
import { BATTERY_SIZES } from './packages.data.ts';
import type { Fact, Kind } from './part.ts';

/** Kinds that are bought by a maker's number, so that an unknown number in a text is taken for one; `strict`: only a long one. */
const BY_NUMBER: Readonly<Partial<Record<Kind, 'loose' | 'strict'>>> = {
  ic: 'loose',
  regulator: 'loose',
  sensor: 'loose',
  module: 'strict',
  display: 'strict',
  transistor: 'loose',
  mosfet: 'loose',
  diode: 'loose',
  zener: 'loose',
  tvs: 'loose',
  led: 'strict',
  connector: 'strict',
  header: 'strict',
  switch: 'strict',
  relay: 'strict',
  fuse: 'strict',
  speaker: 'strict',
  inductor: 'strict',
  ferrite: 'strict',
  transformer: 'strict',
  oscillator: 'strict',
  potentiometer: 'strict',
  varistor: 'strict',
  other: 'strict',
  mechanical: 'strict',
};
const ACTIVE: ReadonlySet<Kind> = new Set(['ic', 'regulator', 'sensor', 'module', 'display']);

/** The maker's part number: its own column as printed, else a number in the value, the description, the library name. */
export function settlePartNumber(kind: Kind, cells: readonly Cell[]): Fact | null {
  const text =
    ownColumn(cells) ??
    fromCodes(kind, cells, IN_WORDS) ??
    fromTexts(kind, cells) ??
    fromCodes(kind, cells, ['device', 'supplierNumber']);
  return text === null ? null : { key: 'partNumber', value: text, unit: null, origin: 'stated' };
}

/** Numbers in the shapes that suppliers give: they name an offer, not a part. */
const SUPPLIERS: RegExp = /-ND$|^C\d{4,8}$/;
const NO_NUMBER = /^(?:-|–|—|n\/?a|none|generic|any|various|tbd|\?+|no|unknown|unk\.?.*|~|\*|x)$/i;

function ownColumn(cells: readonly Cell[]): string | null {
  const cell = cells.find((one) => one.field === 'partNumber');
  const text = cell?.text.trim().replace(/\s+/g, ' ') ?? '';
  if (!cell || text === '' || NO_NUMBER.test(text) || SUPPLIERS.test(text)) return null;
  if (cell.codes.length === 1 && cell.codes[0]?.text === text) return text;
  return isDescription(cell) ? null : text.replace(/\s*\([^)]* type\)$/i, '').replace(/\s\/\s\d$/, '');
}

/** `100 nF`, `2.54 mm header`, `Custom HAT` in the column of part numbers are no numbers. */
export function isDescription(cell: Cell): boolean {
  const text = cell.text.trim().replace(/\s+/g, ' ');
  if (text === '' || NO_NUMBER.test(text)) return false;
  if (!/\d/.test(text)) return /\s/.test(text) || !/[A-Z].*[-_/].*|^[A-Z]{4,}$/.test(text);
  const atoms = cell.atoms.filter((atom) => atom.type !== 'break');
  const stated = atoms.filter(
    (atom) =>
      (atom.type === 'quantity' && atom.quantity.form !== 'bare') || atom.type === 'package' || atom.type === 'dielectric',
  );
  if (!/[\s,]/.test(text))
    return (
      atoms.length > 0 &&
      atoms.length === stated.length &&
      cell.codes.length === 0 &&
      atoms.some((atom) => atom.type === 'quantity')
    );
  if (stated.length >= 2 && cell.codes.length === 0 && /(?:^|\s)\d*[.,]?\d+\s?[pnuµkKMRΩ]/.test(text)) return true;
  const measured = cell.atoms.some(
    (atom) =>
      atom.type === 'quantity' &&
      atom.quantity.form === 'unit' &&
      /\s|^.{0,8}$/.test(text.slice(atom.start - 1, atom.start) || ' ') &&
      atom.quantity.unit !== 'other' &&
      atom.quantity.unit !== 'degC' &&
      atom.quantity.unit !== 'pins',
  );
  const words = cell.atoms.filter((atom) => atom.type === 'word' && atom.meaning.kinds.length > 0).length;
  if (cell.codes.length === 0 && words > 0 && atoms.every(understood) && !/[A-Z]{2,}\d|\d[A-Z]/.test(text)) return true;
  return (
    (measured && words > 0) ||
    /\bseries\b|\bor\b/i.test(text) ||
    words >= 2 ||
    (measured && cell.codes.length === 0 && cell.atoms.every((atom) => understood(atom)))
  );
}

function understood(atom: Atom): boolean {
  return atom.type !== 'unknown' && atom.type !== 'break';
}

/** Numbers that were known by grammar or series, where their kind fits: `Pull-up for DS18B20` is a resistor all the same. */
function fromCodes(kind: Kind, cells: readonly Cell[], fields: readonly Cell['field'][]): string | null {
  for (const field of fields) {
    const cell = cells.find((one) => one.field === field);
    for (const code of cell?.codes ?? []) {
      if (field === 'supplierNumber' && !code.decoded) continue;
      if (kind === 'battery' && BATTERY_SIZES.test(code.text)) continue;
      if (/^\s?(?:series|type|Serie)\b/i.test(cell?.text.slice(code.end) ?? '')) continue;
      if (
        code.decoded
          ? code.kind === kind
          : (related(code.kind, kind) || (ACTIVE.has(code.kind) && ACTIVE.has(kind)) || (kind === 'other' && code.start === 0)) &&
            !aside(cell, code.start)
      )
        return code.text;
    }
  }
  return null;
}

const IN_WORDS = ['value', 'text', 'description', 'category'] as const;

function aside(cell: Cell | undefined, start: number): boolean {
  return cell?.atoms.some((atom) => atom.type === 'word' && atom.meaning.aside && atom.start < start) ?? false;
}

function fromTexts(kind: Kind, cells: readonly Cell[]): string | null {
  const strictness = BY_NUMBER[kind];
  if (!strictness) return null;
  for (const field of ['value', 'text', 'description', 'category', 'device'] as const) {
    const cell = cells.find((one) => one.field === field);
    if (!cell) continue;
    const valueIsEmpty = !cells.some((one) => one.field === 'value' && one.text.trim() !== '');
    if (field === 'device' && (!valueIsEmpty || (strictness === 'strict' && (cell.text.match(/\d/g)?.length ?? 0) < 5))) continue;
    const found = inText(cell, kind, field === 'value' ? strictness : 'strict');
    if (found !== null) return found;
  }
  return null;
}

const BLOCK = /[A-Za-z0-9][^\s;|()"[\]]*/g;
const CLASSIC: ReadonlySet<string> = new Set(['555', '556', '741', '386', '324', '358', '7805', '7812', '7905', '4017', '4051']);
/** Type numbers that are figures alone: fixed regulators 78xx and 79xx, 4000 and 7400 logic (common practice, no source). */
const FIGURES_ALONE = /^(?:7[89](?:05|06|08|09|10|12|15|18|24)|4[05]\d\d|74\d{2,3})$/;

function inText(cell: Cell, kind: Kind, strictness: 'loose' | 'strict'): string | null {
  if (cell.field === 'value' && ACTIVE.has(kind) && /^[A-Z]{2,5} (?!\d+[xX]\d+$)\d[A-Za-z0-9-]{3,}$/.test(cell.text.trim()))
    return cell.text.trim();
  if (cell.field === 'value' && ACTIVE.has(kind) && FIGURES_ALONE.test(cell.text.trim())) return cell.text.trim();
  let at = 0;
  BLOCK.lastIndex = 0;
  for (let match = BLOCK.exec(cell.text); match; match = BLOCK.exec(cell.text)) {
    const comma = /(?<!\d),|,(?!\d)/.exec(match[0]);
    const block = withoutPackage((comma ? match[0].slice(0, comma.index) : match[0]).replace(/[.:,\-/_*]+$/, ''));
    const inside: Atom[] = [];
    // atoms and blocks both go from left to right
    for (; (cell.atoms[at]?.start ?? Infinity) < match.index + block.length; at += 1) {
      const atom = cell.atoms[at];
      if (atom && atom.start >= match.index && atom.end <= match.index + block.length) inside.push(atom);
    }
    if (shaped(block, inside, strictness, kind)) return block;
    if (ACTIVE.has(kind) && CLASSIC.has(block)) return block;
  }
  return null;
}

function shaped(block: string, inside: readonly Atom[], strictness: 'loose' | 'strict', kind: Kind): boolean {
  const digits = block.match(/\d/g)?.length ?? 0;
  if (kind === 'diode' && strictness === 'loose' && /^(?:M[1-7]|[RSU]S?\d[A-Z]|A7|T4)$/.test(block)) return true;
  if (digits < 2 && !(digits === 1 && strictness === 'loose' && /^[A-Z]{2,}\d[A-Z]$/.test(block))) return false;
  const unknown = inside.filter((atom) => atom.type === 'unknown');
  if (/^\d+(?:[.,]\d+)?(?:[xX*]\d+(?:[.,]\d+)?)+$/.test(block)) return false; // `128x64` is a size
  if (/^[\d.,/-]+$/.test(block)) return numbersOnly(block, strictness, kind);
  if (unknown.length === 0 || !/[A-Za-z]/.test(block) || /^RM\d|^rev\.?\d|^v\d|^\d+(?:er|st|nd|rd|th)$/i.test(block))
    return false;
  if (/[a-z]{3}/.test(block.replace(/[xX]{2,}/g, '')) || inside.some((atom) => atom.type === 'grid')) return false;
  if (
    inside.some(
      (atom) =>
        atom.type === 'word' &&
        atom.meaning.kinds.length > 0 &&
        atom.end - atom.start > 2 &&
        atom.meaning.kinds.some((one) => related(one, kind)),
    )
  )
    return false;
  if (strictness === 'loose') return block.length >= 4;
  if (/^[A-Z]{2,}[A-Z0-9]*(?:-[A-Z0-9]+){2,}$/.test(block) && block.length >= 7) return true;
  return (
    block.length >= 6 &&
    digits >= 3 &&
    unknown.some(
      (atom) =>
        /\d/.test(block.slice(atom.start - (inside[0]?.start ?? 0), atom.end - (inside[0]?.start ?? 0))) ||
        atom.end - atom.start >= 2,
    ) &&
    !/_/.test(block)
  );
}

/** `6500/1`, `1734081-1`, `713-1424/037-000`: figures with a stroke between them. */
function numbersOnly(block: string, strictness: 'loose' | 'strict', kind: Kind): boolean {
  if (!/\d[-/.]\d/.test(block) || block.length < 6 || /^(?:\d{1,3}[.,]\d+|\d+[.,]\d{1,3})$/.test(block)) return false;
  return (
    ACTIVE.has(kind) ||
    (strictness === 'strict' &&
      (kind === 'connector' || kind === 'header' || kind === 'switch' || kind === 'led' || kind === 'display') &&
      block.length >= 8)
  );
}
