import { numberFact, wordFact, type Kind, type Part } from '#core/part/part.ts';
import { compare, decimal } from '#core/quantity/decimal.ts';

/** Ways in which a part can harm who solders it, in the order in which they are said. */
export const CAUTIONS = ['cells', 'mains', 'fuses', 'leaded'] as const;
export type Caution = (typeof CAUTIONS)[number];

/** The lowest mains of the world is 100 V. */
const MAINS = decimal(100);
/** Kinds whose rating may be that of their other side (a coil, a secondary): the mains stands in their words only. */
const TWO_SIDED: ReadonlySet<Kind> = new Set(['relay', 'transformer', 'switch', 'connector', 'module', 'wire', 'other']);
const MAINS_WORDS =
  /\bmains\b|\bnetz(?:trafo|transformator|schalter|buchse|stecker|relais|spannung|kabel)|\b[1-9]\d{2,3} ?V ?(?:AC\b|~)|\bAC ?[1-9]\d{2,3} ?V\b/iu;
const MAINS_CLASS = /[XY][1-4]/u;

/** Solder has no kind of its own. */
const SOLDER_KINDS: ReadonlySet<Kind> = new Set(['other', 'wire', 'mechanical', 'not-a-part']);
const LEADED_WORDS = /\bSn ?\d\d ?Pb|(?<!\bnon[- ])(?<!\bun-)\bleaded solder\b/iu;
const LEADED_RATIO = /(?<![\d/])(?:60\/40|63\/37)(?![\d/])/u;
const SOLDER_WORDS = /\bsolder|lötzinn|lötdraht/iu;

const SIGNS: Readonly<Record<Caution, (part: Part) => boolean>> = {
  cells: ({ kind }) => kind === 'battery',
  mains: isForMains,
  fuses: ({ kind }) => kind === 'fuse',
  leaded: isLeaded,
};

/** What is to be minded with a part, told by its facts; by its words only where no fact can hold it. */
export function cautionsOf(part: Part): Caution[] {
  return CAUTIONS.filter((caution) => SIGNS[caution](part));
}

function isForMains(part: Part): boolean {
  const { kind, text } = part;
  const voltage = numberFact(part, 'voltage');
  const high = voltage !== null && compare(voltage, MAINS) >= 0;
  const current = wordFact(part, 'voltage-kind');
  if (current === 'mains' || (current === 'ac' && high)) return true;
  // of a fuse the same fact holds its characteristic
  if (kind === 'capacitor' && MAINS_CLASS.test(wordFact(part, 'safety') ?? '')) return true;
  if (kind === 'varistor') return high;
  return TWO_SIDED.has(kind) && MAINS_WORDS.test(text);
}

function isLeaded({ kind, text }: Part): boolean {
  return LEADED_WORDS.test(text) || (SOLDER_KINDS.has(kind) && SOLDER_WORDS.test(text) && LEADED_RATIO.test(text));
}
