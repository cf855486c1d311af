import type { Doubt } from '#core/part/doubt.ts';
import type { GlossPiece } from '#core/part/gloss.ts';
import type { Fact, Kind } from '#core/part/part.ts';
import { factName } from './fact-name.ts';
import { sayFact, sayTolerance, sayWord, times } from './fact-words.ts';
import { kindWord } from './kind-words.ts';

/** A piece of typed text above what it was read as. */
export interface GlossWords {
  readonly typed: string;
  readonly means: string;
  readonly how: GlossPiece['how'];
}

const GRID = /^\d+x\d+$/;
export const NOT_UNDERSTOOD = 'not understood';
export const NOTE = 'note'; // a remark beside the part
export const NOT_GIVEN = 'not given';

/** A gloss in words: `4k7` over `4.7 kΩ resistor`, `0805` over `package 0805`, a doubt as a question. */
export function sayGloss(pieces: readonly GlossPiece[], kind: Kind): GlossWords[] {
  return pieces.map((piece) => ({ typed: piece.typed || typedFor(piece), means: means(piece, kind), how: piece.how }));
}

function typedFor({ how, facts }: GlossPiece): string {
  if (how === 'doubt') return NOT_GIVEN;
  return facts.every(({ origin }) => origin === 'decoded')
    ? 'by its number'
    : facts.every(({ origin }) => origin === 'assumed')
      ? 'assumed'
      : NOT_GIVEN;
}

function means(piece: GlossPiece, kind: Kind): string {
  if (piece.how === 'unread') return NOT_UNDERSTOOD;
  const grid = piece.words.find((word) => GRID.test(word));
  if (grid !== undefined && piece.facts.some(({ key }) => key === 'pins')) return `${sayWord(grid)} pins`;
  const said = [sayFacts(piece.facts, kind), sayWords(piece)].filter(Boolean).join(' ');
  const whole = piece.kind && saysKind(piece, piece.kind, said) ? `${said} ${kindWord(piece.kind)}`.trim() : said;
  return piece.doubt ? question(piece.doubt, whole) : whole;
}

/** Kinds of many sorts, whose own word says less than that of the sort: `screw terminal`, `cable gland`. */
const SORTED: ReadonlySet<Kind> = new Set<Kind>(['connector', 'battery', 'mechanical', 'other']);

function saysKind({ words }: GlossPiece, kind: Kind, said: string): boolean {
  if (words.length > 0 && SORTED.has(kind)) return false;
  return !said.toLowerCase().includes(kindWord(kind).toLowerCase());
}

/** Words in the lab's spelling; one that stands there with an ending more is said as typed. */
function sayWords({ typed, words }: GlossPiece): string {
  const line = words.map((word) => SORTS[word] ?? sayWord(word)).join(' ');
  return line !== '' && typed.toLowerCase().startsWith(line.toLowerCase()) ? typed : line;
}

/** What a word of a sort is called by itself. */
const SORTS: Readonly<Record<string, string>> = {
  ic: 'IC socket',
  fuse: 'fuse holder',
  dc: 'DC jack',
  holder: 'battery holder',
  gland: 'cable gland',
  foot: 'rubber foot',
  tie: 'cable tie',
};

/** Facts that one piece states: `M3 × 8`, `275 V AC`, `4.7 kΩ ±1 %`. */
export function sayFacts(facts: readonly Fact[], kind: Kind): string {
  const table = new Map(facts.map((fact) => [fact.key, fact]));
  const [low, high] = [table.get('tolerance-low'), table.get('tolerance-high')];
  return facts
    .filter(({ key }) => key !== 'tolerance-high' && key !== 'voltage-kind')
    .map((fact) => {
      if (fact === low) return sayTolerance(low, high ?? low, kind);
      if (fact.key === 'voltage')
        return `${sayFact(fact)}${table.has('voltage-kind') ? ` ${table.get('voltage-kind')?.value.toUpperCase()}` : ''}`;
      return named(fact);
    })
    .join(', ')
    .replace(/^(M[\d.x]+), length ([\d.]+)\u202fmm$/, '$1 × $2');
}

function named(fact: Fact): string {
  const said = sayFact(fact);
  if (fact.key === 'package') return `package ${times(said)}`;
  if (fact.key === 'partNumber') return `part number ${said}`;
  if (fact.key === 'pins') return `${said} ${said === '1' ? 'pin' : 'pins'}`;
  if (fact.key === 'polarised') return said === 'yes' ? 'polarised' : 'not polarised';
  if (fact.key === 'head' && said !== 'countersunk') return `${said} head`;
  return WITH_NAME.has(fact.key) ? `${factName(fact.key)} ${said}` : said;
}

const WITH_NAME: ReadonlySet<string> = new Set([
  'pitch',
  'length',
  'diameter',
  'load-capacitance',
  'temperature-low',
  'temperature-high',
]);

/** A doubt as a short question: `47 pF or 47 nF?` */
function question({ code, args, field }: Doubt, read: string): string {
  const word = (value: string | number | undefined): string =>
    field === 'kind' ? kindWord(value as Kind) : String(value ?? '').replace(/(?<=\d) (?=\S+$)/, '\u202f'); // as: a doubt on the kind names kinds
  if (code === 'kind-unknown') return 'what kind of part?';
  if (code === 'range') return `which ${factName(field)}?`;
  if (args['other'] !== undefined && args['taken'] !== undefined) return `${word(args['taken'])} or ${word(args['other'])}?`;
  return `${read || `which ${factName(field)}`}?`;
}
