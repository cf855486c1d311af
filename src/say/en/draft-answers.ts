import type { ReadRow } from '#core/bom/bom.ts';
import type { Doubt, DoubtCode, DoubtField } from '#core/part/doubt.ts';
import type { FactKey, Kind } from '#core/part/part.ts';
import { kindWord } from './kind-words.ts';
import { counted } from './ui.ts';

/** A likely answer to a doubt: `text` goes back as what should stand in the field, `says` is its button. */
export interface OfferedAnswer {
  readonly text: string;
  readonly says: string;
}

const UNITS: Readonly<Partial<Record<Kind, readonly string[]>>> = {
  resistor: ['Ω', 'kΩ', 'MΩ'],
  potentiometer: ['Ω', 'kΩ', 'MΩ'],
  capacitor: ['pF', 'nF', 'µF'],
  inductor: ['nH', 'µH', 'mH'],
  ferrite: ['Ω', 'kΩ'],
  crystal: ['kHz', 'MHz'],
};
const BARE = /^\s*(\d+(?:[.,]\d+)?)\s*$/;

/** Codes whose arguments name two readings of the field, each a text that stands for itself. */
const READINGS: ReadonlySet<DoubtCode> = new Set<DoubtCode>([
  'two-readings',
  'code-assumed',
  'conflict',
  'size-metric-or-imperial',
]);

/** What a doubt may well be answered with; an empty list where only a person can say. */
export function offeredAnswers({ field, code, args }: Doubt, row: ReadRow): OfferedAnswer[] {
  const text = (name: string): string => String(args[name] ?? '').trim();
  if (code === 'quantity-not-refs')
    return [
      { text: text('refs'), says: `${counted(Number(text('refs')), 'piece', 'pieces')}, as the refs say` },
      { text: text('quantity'), says: `${text('quantity')}, as it is written` },
    ].filter((answer) => /^\d+$/.test(answer.text));
  if (code === 'quantity-estimate') return [{ text: text('taken'), says: `${text('taken')}, counted` }];
  if (code === 'unit-assumed') return unitAnswers(text('text'), row.part.kind);
  if (code === 'range') return rangeAnswers(text('text'));
  if (field === 'fitted')
    return [
      { text: 'yes', says: 'fitted' },
      { text: 'no', says: 'not fitted' },
    ];
  // as: a doubt between two kinds names them
  if (code === 'kind-unclear')
    return distinct([text('taken'), text('other')]).map((kind) => ({ text: kind, says: kindWord(kind as Kind) }));
  if (!READINGS.has(code)) return [];
  const readings = distinct([text('taken'), text('other')]);
  return (field === 'value' ? valuesOf(readings, text('text'), row.part.text) : readings).map((one) => ({
    text: one,
    says: one,
  }));
}

const RIGHT = 'Right as read';

/** What "right as read" means for a doubt; null where nothing was read that could be right. */
export function rightMeans({ field, code, args }: Doubt, row: ReadRow, is: 'list' | 'bom'): string | null {
  if (field === 'quantity') return rightQuantity(code, args, row, is);
  if (field === 'kind')
    return code !== 'kind-unknown' ? RIGHT : /\p{L}{2}/u.test(row.part.text) ? 'Keep it by its words alone' : null;
  if (code === 'range') return null;
  const fact = FACT_OF[field];
  return fact !== undefined && row.part.facts[fact] === undefined ? null : RIGHT;
}

function rightQuantity(code: DoubtCode, args: Doubt['args'], row: ReadRow, is: 'list' | 'bom'): string | null {
  if (is === 'bom') return row.refs.length > 0 || row.quantity !== null ? RIGHT : null;
  if (code === 'quantity-estimate' && Number.isSafeInteger(args['taken']))
    return `about ${args['taken']}, to be counted (plans promise none of it)`;
  return row.quantity !== null && Number.isSafeInteger(row.quantity) ? RIGHT : 'Count it later';
}

/** Facts that a doubt may be about, by its field. */
const FACT_OF: Readonly<Partial<Record<DoubtField, FactKey>>> = {
  value: 'value',
  unit: 'value',
  tolerance: 'tolerance-low',
  voltage: 'voltage',
  power: 'power',
  current: 'current',
  dielectric: 'dielectric',
  technology: 'technology',
  package: 'package',
  partNumber: 'partNumber',
  maker: 'maker',
};

/** `Number 12 stands in row 13 too.`, `Number 12 is on a bag of the lab: 4.7 kΩ ±1 %.`, and the next number that is free. */
export function sayTakenNumber(
  number: number,
  by: { readonly row: number } | { readonly bag: string },
  free: number | null,
): { readonly why: string; readonly settle: string; readonly answers: OfferedAnswer[] } {
  const why =
    'row' in by
      ? `Number ${number} stands in row ${by.row} too.`
      : `Number ${number} is on a bag of the lab${by.bag ? `: ${by.bag}` : ''}.`;
  return {
    why,
    settle: 'Give it another number, or leave the line out; nothing is kept before.',
    answers: free === null ? [] : [{ text: String(free), says: `Number ${free}, the next that is free` }],
  };
}

/** Why a draft can't be kept, and where the way on is. */
export function sayDraftTrouble(text: string, numbersTaken: boolean): string {
  return numbersTaken ? `${text} Give each another number below, or leave its line out.` : text;
}

const NUMBER = /^\d+(?:\.\d+)?$/;

/** Two readings of a number alone get the unit that stands behind it: `1.000` in `1.000 µF` → `1 µF`, `1000 µF`. */
function valuesOf(readings: readonly string[], typed: string, written: string): string[] {
  if (!readings.some((one) => NUMBER.test(one))) return [...readings];
  const at = typed === '' ? -1 : written.indexOf(typed);
  const unit =
    at < 0
      ? undefined
      : /^\s*([pnuµμmkMG]?(?:F|H|Hz|Ω|V|A|ohms?)|[pnuµμkM])(?![A-Za-z])/.exec(written.slice(at + typed.length))?.[1];
  return unit === undefined ? [] : readings.map((one) => `${one} ${unit}`);
}

function unitAnswers(typed: string, kind: Kind): OfferedAnswer[] {
  const number = BARE.exec(typed)?.[1];
  if (number === undefined) return [];
  return (UNITS[kind] ?? []).map((unit) => ({ text: `${number} ${unit}`, says: `${number}\u202f${unit}` }));
}

const MOST_VALUES = 4;

function rangeAnswers(typed: string): OfferedAnswer[] {
  const values = distinct(typed.split(/\s*(?:\.\.\.?|…|–|—|\bto\b|\bor\b|\/|;)\s*/)).filter((value) => /\d/.test(value));
  return values.length > 1 && values.length <= MOST_VALUES ? values.map((value) => ({ text: value, says: value })) : [];
}

function distinct(texts: readonly string[]): string[] {
  return [...new Set(texts)].filter((text) => text !== '');
}
