import { wordFact, type Kind, type Part } from '#core/part/part.ts';
import { wireSizesClash, wireSizesNear } from '#core/part/mechanical/wire-size.ts';
import { VARIANT_ROWS } from '#core/part/variant-words.data.ts';
import { finding, type Finding } from './finding.ts';

interface Group {
  readonly name: string;
  readonly words: readonly string[];
  readonly kinds: ReadonlySet<string>;
}

const GROUPS: readonly Group[] = groups();

function groups(): Group[] {
  const found = new Map<string, { name: string; words: string[]; kinds: Set<string> }>();
  for (const [name, word, , kinds] of VARIANT_ROWS) {
    if (name === '') continue;
    const group = found.get(name) ?? { name, words: [], kinds: new Set<string>() };
    if (word !== '') group.words.push(word);
    for (const kind of kinds.split(' ')) group.kinds.add(kind);
    found.set(name, group);
  }
  return [...found.values()];
}

const wordsOf = (part: Part): string[] => wordFact(part, 'variant')?.toLowerCase().split(' ') ?? [];

/**
 * How the words that no other fact holds answer each other. Words that exclude each other, and measures of one shape with other
 * figures (`pg7`, `pg9`): missing. Words that only one side says, where they matter, or other words: a person looks.
 */
export function variantFindings(has: Part, asked: Part, matters: boolean): Finding[] {
  const [mine, wanted] = [wordsOf(has), wordsOf(asked)];
  const args = { fact: 'variant', has: wordFact(has, 'variant') ?? '', asked: wordFact(asked, 'variant') ?? '' };
  const conflict = clash(asked.kind, mine, wanted);
  if (conflict) return [finding(conflict, 'differs', args, 'variant')];
  if (mine.length === 0 && wanted.length === 0) return [];
  const [more, less] = [mine.filter((word) => !wanted.includes(word)), wanted.filter((word) => !mine.includes(word))];
  if (more.length === 0 && less.length === 0) return [finding('exact', 'same', args, 'variant')];
  if (less.length === 0)
    return matters ? [finding('check', 'not-asked', { fact: 'variant', has: more.join(' ') }, 'variant')] : [];
  if (more.length === 0) return [finding('check', 'not-stated', { fact: 'variant', asked: less.join(' ') }, 'variant')];
  return [finding('check', 'differs', args, 'variant')];
}

function clash(kind: Kind, mine: readonly string[], wanted: readonly string[]): 'missing' | 'check' | null {
  for (const { name, words, kinds } of GROUPS) {
    if (!kinds.has(kind)) continue;
    const [own, asked] = [words.filter((word) => mine.includes(word)), words.filter((word) => wanted.includes(word))];
    if (name.endsWith('!') && (own.length === 0) !== (asked.length === 0)) return 'missing';
    if (own.length === 0 || asked.length === 0 || own.some((word) => asked.includes(word))) continue;
    return name.endsWith('<') && words.indexOf(own[0] ?? '') > words.indexOf(asked[0] ?? '') ? 'check' : 'missing';
  }
  return measuresClash(mine, wanted) || wireSizesClash(mine, wanted) ? 'missing' : null;
}

/** `pg9` for `pg7`, `12x12mm` for `6x6mm`: measures of one shape, none of them equal. */
function measuresClash(mine: readonly string[], wanted: readonly string[]): boolean {
  const [own, asked] = [shapes(mine), shapes(wanted)];
  return [...asked].some(([shape, words]) => own.has(shape) && !own.get(shape)?.some((word) => words.includes(word)));
}

function shapes(words: readonly string[]): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const word of words) {
    if (!/\d/.test(word)) continue;
    const shape = word.replaceAll(/\d+(?:\.\d+)?/g, '#');
    found.set(shape, [...(found.get(shape) ?? []), word]);
  }
  return found;
}

/** Are two variants so alike that they may name one part? More than half of the words of the shorter are in the longer. */
export function alikeVariant(has: string, asked: string): boolean {
  if (has === '' || asked === '') return false;
  const [mine, wanted] = [has.toLowerCase().split(' '), asked.toLowerCase().split(' ')];
  const both = mine.filter((word) => wanted.includes(word)).length;
  return both * 2 > Math.min(mine.length, wanted.length) || wireSizesNear(mine, wanted);
}

/** Do the words say a measure, so that they tell the part and not only its sort? */
export function measured(part: Part): boolean {
  const numbers = (['pins', 'pitch', 'length', 'diameter', 'value', 'package'] as const).some(
    (key) => part.facts[key] !== undefined,
  );
  return numbers || wordsOf(part).some((word) => /\d/.test(word)) || wordsOf(part).length > 2;
}
