import type { Cell } from './cell.ts';
import { KIND_ROWS } from './kinds.data.ts';
import type { Fact, FactKey, Kind } from './part.ts';
import { WORD_FACTS } from './part.ts';
import { decimal, type Decimal } from '#core/quantity/decimal.ts';

/** Facts that words and codes state: technology, dielectric, polarity, colour, thread, pins, pitch. */
export function settleWords(kind: Kind, cells: readonly Cell[]): Fact[] {
  const facts = new Map<FactKey, Fact>();
  const put = (key: FactKey, value: string, unit: string | null = null): void => {
    if (KIND_ROWS[kind].facts.includes(key) && !facts.has(key)) facts.set(key, { key, value, unit, origin: 'stated' });
  };
  for (const cell of cells) if (cell.field !== 'supplierNumber' && cell.field !== 'maker') readWords(cell, put);
  const dielectrics = new Set(
    cells.flatMap((cell) => cell.atoms.flatMap((atom) => (atom.type === 'dielectric' ? [atom.name] : []))),
  );
  const [dielectric] = dielectrics;
  // `X5R/X7R`: either will do, so neither is stated
  if (dielectric !== undefined && dielectrics.size === 1) put('dielectric', dielectric);
  if (kind === 'capacitor') {
    const drawn = cells.find((cell) => cell.field === 'footprint' || cell.field === 'package')?.text ?? '';
    if (/(?:^|:)CP[-_]|CPOL|CAPMP|CAPAE|CAP_POL/i.test(drawn)) put('polarised', 'yes');
  }
  return [...facts.values()];
}

type Put = (key: FactKey, value: string, unit?: string | null) => void;

function readWords(cell: Cell, put: Put): void {
  for (const atom of cell.atoms) {
    if (atom.type === 'word') for (const [fact, value] of atom.meaning.facts) if (isWordFact(fact)) put(fact, value);
    if (atom.type === 'thread') {
      put('thread', atom.thread);
      if (atom.length !== null) put('length', millimetres(atom.length), 'm');
    }
    if (atom.type === 'grid') put('pins', decimal(atom.rows * atom.columns), 'count');
    if (atom.type === 'quantity' && atom.quantity.unit === 'pins') put('pins', atom.quantity.value, 'count');
    if (atom.type === 'quantity' && atom.quantity.unit === 'm' && PITCHES.has(atom.quantity.value))
      put('pitch', atom.quantity.value, 'm');
  }
}

const PITCHES: ReadonlySet<string> = new Set(
  ['1', '1.25', '1.27', '1.5', '2', '2.5', '2.54', '3.5', '3.81', '3.96', '5', '5.08', '7.5', '7.62', '0.5', '0.8'].map(
    millimetres,
  ),
);

function millimetres(number: string): Decimal {
  return decimal(`${number}e-3`);
}

function isWordFact(fact: string): fact is (typeof WORD_FACTS)[number] {
  return (WORD_FACTS as readonly string[]).includes(fact); // as: widened only to ask
}
