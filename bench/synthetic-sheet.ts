import type { Part } from '#core/part/part.ts';
import { writeValue } from '#core/part/write-value.ts';
import { writeDelimited } from './delimited.ts';
import { seeded, type Seeded } from './seeded.ts';
import { syntheticPart } from './synthetic-part.ts';

const HEADER = ['Bag', 'Box', 'Value', 'Package', 'Description', 'Maker', 'Part number', 'Quantity'] as const;

/** So many descriptions such as people write, the same for the same seed. */
export function syntheticTexts(count: number, seed = 5): string[] {
  const chance = seeded(seed);
  return Array.from({ length: count }, () => syntheticPart(chance).text);
}

/** A stock list of so many rows as comma-separated text: bags of so many different parts, the first of them more often. */
export function syntheticSheet(rows: number, different: number, seed = 6): Uint8Array {
  const chance = seeded(seed);
  const parts = Array.from({ length: different }, () => syntheticPart(chance));
  const lines = Array.from({ length: rows }, (_, at) =>
    line(at + 1, parts.length < rows ? chance.often(parts) : (parts[at] ?? chance.pick(parts)), chance),
  );
  return new TextEncoder().encode(writeDelimited([HEADER, ...lines]));
}

function line(bag: number, part: Part, chance: Seeded): string[] {
  const { facts, text } = part;
  return [
    String(bag),
    chance.pick(['A', 'B', 'C', 'D']),
    writeValue(part),
    facts.package?.value ?? '',
    text,
    facts.maker?.value ?? '',
    facts.partNumber?.value ?? '',
    String(chance.whole(1, 400)),
  ];
}

/** What no person writes: pieces of numbers, units, letters, marks and far scripts in any order. */
export function garbage(characters: number, seed = 8): string {
  const chance = seeded(seed);
  const pieces = [
    '10',
    'k',
    'µ',
    ',',
    '.',
    '-',
    '±',
    'Ω',
    '/',
    ' ',
    'R',
    'x',
    '0805',
    '%',
    'M3',
    '"',
    '電',
    '\u0301',
    '😀',
    '(',
    '_',
    'SOT',
    '+',
    'E',
    '\ufffd',
  ];
  let text = '';
  while (text.length < characters) text += chance.pick(pieces);
  return text.slice(0, characters);
}
