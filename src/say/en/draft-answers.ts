import type { ReadRow } from '#core/bom/bom.ts';
import type { Doubt } from '#core/part/doubt.ts';
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

/** What a doubt may well be answered with; an empty list where only a person can say. */
export function offeredAnswers({ field, code, args }: Doubt, row: ReadRow): OfferedAnswer[] {
  const text = (name: string): string => String(args[name] ?? '').trim();
  if (code === 'quantity-not-refs')
    return distinct([
      { text: text('refs'), says: `${counted(Number(text('refs')), 'piece', 'pieces')}, as the refs say` },
      { text: text('quantity'), says: `${text('quantity')}, as it is written` },
    ]);
  if (code === 'quantity-estimate') return distinct([{ text: text('taken'), says: `${text('taken')}, counted` }]);
  if (code === 'unit-assumed') return unitAnswers(text('text'), row.part.kind);
  if (field === 'fitted')
    return [
      { text: 'yes', says: 'fitted' },
      { text: 'no', says: 'not fitted' },
    ];
  if (field === 'kind')
    return distinct([text('taken'), text('other')].map((kind) => ({ text: kind, says: kindWord(kind as Kind) }))); // as: a doubt on the kind names kinds
  if (code === 'range') return rangeAnswers(text('text'));
  if (field === 'row') return [];
  return distinct([text('taken'), text('other')].map((one) => ({ text: one, says: one })));
}

function unitAnswers(typed: string, kind: Kind): OfferedAnswer[] {
  const number = BARE.exec(typed)?.[1];
  if (number === undefined) return [];
  return (UNITS[kind] ?? []).map((unit) => ({ text: `${number} ${unit}`, says: `${number}\u202f${unit}` }));
}

const MOST_VALUES = 4;

function rangeAnswers(typed: string): OfferedAnswer[] {
  const values = typed.split(/\s*(?:\.\.\.?|…|–|—|\bto\b|\bor\b|\/|;)\s*/).filter((value) => /\d/.test(value));
  return values.length > 1 && values.length <= MOST_VALUES ? distinct(values.map((value) => ({ text: value, says: value }))) : [];
}

function distinct(answers: readonly OfferedAnswer[]): OfferedAnswer[] {
  const seen = new Set<string>();
  return answers.filter(({ text }) => text !== '' && text !== 'undefined' && text !== 'NaN' && !seen.has(text) && seen.add(text));
}
