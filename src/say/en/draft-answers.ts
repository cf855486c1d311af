import type { ReadRow } from '#core/bom/bom.ts';
import type { Doubt, DoubtCode } from '#core/part/doubt.ts';
import type { Kind } from '#core/part/part.ts';
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
