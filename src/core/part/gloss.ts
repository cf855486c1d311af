import { withoutControls } from '#core/quantity/plain-text.ts';
import { multiply, decimal, type Decimal } from '#core/quantity/decimal.ts';
import type { Atom } from './atoms.ts';
import { readCell, type Cell } from './cell.ts';
import { related } from './decide-kind.ts';
import type { Doubt, DoubtField } from './doubt.ts';
import { isAssumption, isOfPart } from './doubted.ts';
import { interpretValue } from './interpret-value.ts';
import { KIND_ROWS } from './kinds.data.ts';
import type { Fact, FactKey, Kind, Part } from './part.ts';
import { variantPlaces } from './settle-variant.ts';
import { FILLERS } from './variant-words.data.ts';
import { foldWords } from './words.ts';

/** A piece of a typed text, and what it was read as; `filled` pieces are in no text. */
export interface GlossPiece {
  readonly typed: string;
  readonly how: 'read' | 'doubt' | 'unread' | 'filled';
  readonly facts: readonly Fact[];
  /** the kind, where this piece is what tells it */
  readonly kind: Kind | null;
  /** words that tell the part apart from others of its kind */
  readonly words: readonly string[];
  readonly doubt: Doubt | null;
}

interface Span {
  readonly start: number;
  readonly end: number;
  readonly facts: readonly Fact[];
  readonly kind: Kind | null;
  readonly words: readonly string[];
  readonly known: boolean;
}

/**
 * A text over what was read from it, in the order of the text: `4k7 1% 0805` → `4k7`: the value and the kind, `1%`: the tolerance,
 * `0805`: the package. What no reading claims is `unread`; what the part has and the text does not say is `filled`.
 */
export function glossPart(text: string, part: Part, doubts: readonly Doubt[]): GlossPiece[] {
  const written = withoutControls(text);
  const cell = readCell('text', written);
  const spans = joined([...tokens(cell, part), ...variantSpans(cell, part)], written);
  const unknown = doubts.some(({ code }) => code === 'kind-unknown');
  const pieces = withDoubts(
    spans.map((span) => pieceOf(span, written, unknown)),
    spans,
    written,
    doubts.filter(isOpen),
  );
  const said = new Set(spans.flatMap(({ facts }) => facts.map(({ key }) => key)));
  const variantSaid = spans.some(({ words }) => words.length > 0);
  const silent = Object.values(part.facts).filter(
    ({ key }) => !said.has(key) && !SILENT.has(key) && !(key === 'variant' && variantSaid),
  );
  return [...withKind(pieces, part.kind), ...otherDoubts(pieces, doubts), ...filled(silent)];
}

/** Facts that are said together with another, or are no reading of the text. */
const SILENT: ReadonlySet<FactKey> = new Set<FactKey>(['voltage-kind', 'doubted', 'maker']);

function filled(facts: readonly Fact[]): GlossPiece[] {
  return facts.length ? [{ typed: '', how: 'filled', facts, kind: null, words: [], doubt: null }] : [];
}

/** Part numbers and atoms of the text, with the facts of the part that each states. */
function tokens(cell: Cell, part: Part): Span[] {
  const codes = cell.codes.map(({ text, start, end }) => {
    const facts = factsNamed(part, text);
    return { start, end, facts, kind: null, words: [], known: facts.length > 0 };
  });
  const atoms = cell.atoms.flatMap((atom, index) => {
    const written = cell.text.slice(atom.start, atom.end);
    if (atom.type === 'break' || isFiller(written) || (part.facts.pitch && PITCH.test(written))) return [];
    const read = factsOf(atom, part, cell, index);
    const facts = read.length > 0 ? read : factsNamed(part, written);
    const kind = atom.type === 'word' && atom.meaning.kinds.some((one) => related(one, part.kind)) ? part.kind : null;
    const known = facts.length > 0 || kind !== null;
    return [{ start: atom.start, end: atom.end, facts, kind, words: [], known }];
  });
  return [...codes, ...atoms];
}

/** The names among the facts that a text has whole, or a part of: `CR2032`, `3mm`, `T`, `LM358`. */
function factsNamed({ facts }: Part, written: string): Fact[] {
  const text = written.toLowerCase().replaceAll(/\s/g, '');
  const number = facts.partNumber;
  if (number && text.length > 1 && number.value.toLowerCase().includes(text)) return [number];
  return [facts.package, facts.safety, facts.dielectric, facts.colour]
    .filter((fact) => fact?.value.toLowerCase() === text)
    .filter((fact) => fact !== undefined);
}

/** Words that only name what the number beside them is. */
const PITCH = /^(?:pitch|raster|rm)$/i;
const NO_WORDS: ReadonlySet<string> = new Set(FILLERS.split(' '));

/** Words that say nothing of a part: `board`, `pcs`; those that name a kind say something. */
function isFiller(text: string): boolean {
  return NO_WORDS.has(foldWords(text)) && !NAMES_KIND.test(text);
}

const NAMES_KIND =
  /^(?:switch|button|schalter|taster|conn|stecker|jack|resistor|capacitor|inductor|relay|relais|batter|cell|coin|fuse|sicherung|display|anzeige|modul|sensor|speaker|laut|buzzer|wire|cable|kabel|draht|trans|trafo|mech|screw|schraube|nut|mutter|washer|scheibe|standoff|spacer|ic|chip|diode|mosfet|led|crystal|quarz|osc|reg|pot)/i;

function factsOf(atom: Atom, part: Part, cell: Cell, index: number): Fact[] {
  const { facts } = part;
  const present = (...keys: FactKey[]): Fact[] => keys.flatMap((key) => facts[key] ?? []);
  if (atom.type === 'quantity') return quantityFacts(atom, part, cell, index);
  if (atom.type === 'asymmetric') return present('tolerance-low', 'tolerance-high');
  if (atom.type === 'dielectric') return present('dielectric').filter(({ value }) => value === atom.name);
  if (atom.type === 'thread') return present('thread', ...(atom.length === null ? [] : (['length'] as const)));
  if (atom.type === 'grid') return present('pins');
  if (atom.type === 'package') {
    const packages = cell.atoms.filter((one) => one.type === 'package').length;
    return present('package').filter(({ value }) => packages === 1 || value === atom.reading.name);
  }
  if (atom.type === 'word')
    return Object.values(facts).filter(({ key, value }) =>
      atom.meaning.facts.some(([fact, meant]) => fact === key && (meant === value || value.split(/[/ ]/).includes(meant))),
    );
  return [];
}

const MILLIONTH = decimal('1e-6');

/** The facts that a number states: those that have its very value, in its unit where it has one. */
function quantityFacts(atom: Extract<Atom, { type: 'quantity' }>, { facts, kind }: Part, cell: Cell, index: number): Fact[] {
  const { quantity } = atom;
  const unit = KIND_ROWS[kind].value;
  const candidate = unit === undefined ? null : interpretValue(quantity, kind, unit, cell, index);
  const found: Fact[] = [];
  if (candidate && facts.value?.value === candidate.value) {
    found.push(facts.value);
    const letter = candidate.letter !== null || /^\s+[BDFGJKM]\s*$/.test(cell.text.slice(quantity.end));
    if (letter && !/%|ppm/i.test(cell.text)) found.push(...tolerances(facts));
    if (facts.safety && /^[A-Z]/i.test(cell.text.slice(atom.start, quantity.start))) found.push(facts.safety);
    return found;
  }
  const values: readonly Decimal[] =
    quantity.unit === 'ppm' || quantity.unit === 'K/W' ? [multiply(quantity.value, MILLIONTH)] : [quantity.value];
  for (const fact of Object.values(facts)) {
    if (fact.unit === null) continue;
    const own = fact.unit === quantity.unit || (fact.unit === 'count' && quantity.unit === 'pins');
    const free = quantity.unit === null || quantity.unit === 'ppm' || quantity.unit === 'K/W';
    const thousandth = fact.unit === 'm' && quantity.unit === null && fact.value === multiply(quantity.value, decimal('1e-3'));
    if (((own || free) && values.some((value) => value === fact.value)) || thousandth) found.push(fact);
  }
  return found;
}

function tolerances(facts: Part['facts']): Fact[] {
  return [facts['tolerance-low'], facts['tolerance-high']].filter((fact) => fact !== undefined);
}

function variantSpans(cell: Cell, part: Part): Span[] {
  const variant = part.facts.variant?.value.split(' ') ?? [];
  return variantPlaces(
    part.kind,
    cell,
    Object.values(part.facts).filter(({ key }) => key !== 'variant'),
  ).flatMap(({ word, start, end }) =>
    word === '' || variant.includes(word)
      ? [{ start, end, facts: [], kind: null, words: word === '' ? [] : [word], known: true }]
      : [],
  );
}

/** Spans that lie over each other are one piece; so are neighbours that nobody understood. */
function joined(spans: readonly Span[], text: string): Span[] {
  const out: Span[] = [];
  for (const span of spans.toSorted((a, b) => a.start - b.start || b.end - a.end)) {
    const before = out.at(-1);
    if (
      before &&
      (span.start < before.end || (!span.known && !before.known && !/[();]/.test(text.slice(before.end, span.start))))
    )
      out[out.length - 1] = both(before, span);
    else out.push(span);
  }
  return out;
}

function both(a: Span, b: Span): Span {
  return {
    start: a.start,
    end: Math.max(a.end, b.end),
    facts: [...new Set([...a.facts, ...b.facts])],
    kind: a.kind ?? b.kind,
    words: [...new Set([...a.words, ...b.words])],
    known: a.known || b.known,
  };
}

/** Words of a text whose kind nobody knows are kept, but not understood. */
function pieceOf({ start, end, facts, kind, words, known }: Span, text: string, unknown: boolean): GlossPiece {
  const how = known && !(unknown && facts.length === 0 && kind === null) ? 'read' : 'unread';
  return { typed: text.slice(start, end).trim(), how, facts, kind, words, doubt: null };
}

function isOpen(doubt: Doubt): boolean {
  return isOfPart(doubt) && !isAssumption(doubt);
}

const KEYS: Readonly<Partial<Record<DoubtField, FactKey>>> = { unit: 'value', tolerance: 'tolerance-low' };

/** Each doubt stands on the pieces that it is about: by its place, by the fact that was read, by the text that it names. */
function withDoubts(pieces: readonly GlossPiece[], spans: readonly Span[], text: string, doubts: readonly Doubt[]): GlossPiece[] {
  const out = [...pieces];
  for (const doubt of doubts)
    for (const at of placesOf(doubt, spans, text)) {
      const piece = out[at];
      if (piece && piece.doubt === null) out[at] = { ...piece, how: 'doubt', doubt };
    }
  return out;
}

function placesOf({ field, span, args }: Doubt, spans: readonly Span[], text: string): number[] {
  if (field === 'kind') return [];
  const where = (test: (span: Span) => boolean): number[] => spans.flatMap((one, at) => (test(one) ? [at] : []));
  if (span) return where(({ start, end }) => span[0] < end && start < span[1]);
  const byFact = where(({ facts }) => facts.some(({ key }) => key === (KEYS[field] ?? field)));
  if (byFact.length > 0) return byFact;
  const about = String(args['text'] ?? '').trim();
  const at = about === '' || about === text.trim() ? -1 : text.indexOf(about);
  return at < 0 ? [] : where(({ start, end, facts }) => facts.length === 0 && at < end && start < at + about.length);
}

/** The kind stands once: with the word that names it, else with the value, the part number, the thread or the first thing read. */
function withKind(pieces: readonly GlossPiece[], kind: Kind): GlossPiece[] {
  const tells = (key: FactKey): number => pieces.findIndex(({ facts }) => facts.some((fact) => fact.key === key));
  const named = pieces.findIndex((piece) => piece.kind !== null);
  const first = pieces.findIndex(({ how }) => how !== 'unread');
  const at =
    kind === 'other' ? named : [named, tells('value'), tells('partNumber'), tells('thread'), first].find((one) => one >= 0);
  return pieces.map((piece, index) => {
    if (index === at) return { ...piece, kind: piece.kind ?? kind };
    return piece.facts.length > 0 || piece.words.length > 0 ? { ...piece, kind: null } : piece;
  });
}

/** A doubt that is on no piece, such as one on the kind, stands behind. */
function otherDoubts(pieces: readonly GlossPiece[], doubts: readonly Doubt[]): GlossPiece[] {
  return doubts
    .filter((one) => isOpen(one) && !pieces.some((piece) => piece.doubt === one))
    .filter((one) => one.field === 'kind' || !pieces.some((piece) => piece.doubt?.field === one.field))
    .map((doubt) => ({ typed: '', how: 'doubt', facts: [], kind: null, words: [], doubt }));
}
