import type { ReadRow } from '#core/bom/bom.ts';
import { withDoubts } from '#core/part/doubted.ts';
import { partCode, toldByText } from '#core/part/part-code.ts';
import type { Fact, Part } from '#core/part/part.ts';
import type { NewPart } from '#db/parts.ts';
import { canonical } from './body-hash.ts';

/**
 * One spelling for one set of facts: parts of equal facts are one part, whatever their text says. Where no fact tells the part,
 * its code made of its text does: two things of which nothing was understood are never one.
 */
export function partKey(part: Part): string {
  const facts = factsOf(part).map(({ key, value, unit, origin }) => [key, value, unit, origin]);
  return canonical(toldByText(part) ? [part.kind, facts, partCode(part)] : [part.kind, facts]);
}

/** Parts never change, so what was made of one holds: a long list is thought through once, before its transaction. */
const made = new WeakMap<Part, NewPart>();

/** A part as the lab keeps it. */
export function newPart(part: Part): NewPart {
  const known = made.get(part) ?? makePart(part);
  made.set(part, known);
  return known;
}

const ofRows = new WeakMap<ReadRow, NewPart>();

/** The part of a row that becomes a bag, with what was doubtful about it. */
export function partOfRow(row: ReadRow): NewPart {
  const known = ofRows.get(row) ?? makePart(withDoubts(row.part, row.doubts));
  ofRows.set(row, known);
  return known;
}

function makePart(part: Part): NewPart {
  return { key: partKey(part), code: partCode(part), kind: part.kind, text: part.text, facts: factsOf(part) };
}

function factsOf(part: Part): Fact[] {
  return Object.values(part.facts)
    .filter((fact) => fact !== undefined)
    .toSorted((a, b) => (a.key < b.key ? -1 : 1));
}
