import { writeRkm } from '#core/quantity/rkm.ts';
import { numberFact, wordFact, type Kind, type Part } from './part.ts';

const LETTERS: Readonly<Partial<Record<Kind, string>>> = { resistor: 'R', capacitor: 'C', inductor: 'L' };

/** The lab's canonical short name of a part: `R-0805-4K7-F`. First simple version. */
export function partCode(part: Part): string {
  const value = numberFact(part, 'value');
  return [LETTERS[part.kind] ?? part.kind.toUpperCase(), wordFact(part, 'package'), value ? writeRkm(value, part.facts.value?.unit ?? null) : null, wordFact(part, 'partNumber')]
    .filter((piece) => piece !== null)
    .join('-');
}
