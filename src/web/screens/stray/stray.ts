import type { FoundBag } from '#api/bags.ts';
import { readBands } from '#core/part/marking/bands.ts';
import type { Colour } from '#core/part/marking/colours.data.ts';
import type { Look, MarkingRead, Plausible, Reading } from '#core/part/marking/marking.ts';
import { readMarking } from '#core/part/marking/read-marking.ts';
import { isChip } from '#core/serve/outline.ts';
import { plainDigits, writeQuantity } from '#core/quantity/write-quantity.ts';
import { numberFact, type Part } from '#core/part/part.ts';
import { sayReading, sayUnread } from '#say/en/markings.ts';
import { sayAlso, sayEither, sayLikely, sayPerhaps, saySetBand, STRAY_PAGE } from '#say/en/stray-page.ts';
import type { Seen } from './place.ts';

/** The band, counted from 0, before which the wider gap stands. */
export function gapBefore({ gap, bands }: Pick<Seen, 'gap' | 'bands'>): number | null {
  if (gap === null || bands.length < 3) return null;
  return gap === 'first' ? 1 : bands.length - 1;
}

/** What is seen, read; null while there is nothing to read yet. */
export function readSeenPart(seen: Seen): MarkingRead | null {
  if (seen.look !== 'bands') {
    if (seen.mark.trim() === '') return null;
    return readMarking(seen.mark, { look: seen.look, underlined: seen.underlined });
  }
  const bands = seen.bands.filter((colour): colour is Colour => colour !== null);
  if (bands.length < seen.bands.length) return null;
  return readBands(bands, { gapBefore: gapBefore(seen), old: seen.old });
}

/** The sentence that answers, and one line of why. */
export function answerOf(seen: Seen, read: MarkingRead | null): { readonly title: string; readonly why: string } {
  if (read === null) return whatIsMissing(seen);
  if (read.unread) {
    const { why, settle } = sayUnread(read.unread);
    return { title: why, why: settle };
  }
  const told = (wanted: readonly Plausible[]): string[] => [
    ...new Set(read.readings.filter(({ plausible }) => wanted.includes(plausible)).map(sayReading)),
  ];
  const likely = told(['likely']);
  const [first = ''] = likely.length > 0 ? likely : told(['possible', 'unlikely']);
  const others = told(['possible']).filter((one) => !likely.includes(one) && one !== first);
  const title = likely.length > 1 ? sayEither(likely) : likely.length === 1 ? sayLikely(first) : sayPerhaps(first);
  const sure = likely.length === 1 && others.length === 0;
  return { title, why: `${sayAlso(others)} ${sure ? STRAY_PAGE.sure : STRAY_PAGE.measure}`.trim() };
}

function whatIsMissing({ look, bands }: Seen): { readonly title: string; readonly why: string } {
  if (look !== 'bands') return { title: STRAY_PAGE.begin, why: STRAY_PAGE.beginMark };
  const begun = bands.some((colour) => colour !== null);
  const title = begun ? saySetBand(bands.indexOf(null) + 1, bands.length) : STRAY_PAGE.begin;
  return { title, why: STRAY_PAGE.beginBands };
}

const partOf = ({ kind, facts }: Reading): Part => ({ kind, facts, text: '' });

/** What to ask the lab for: value and kind, since a bag of another tolerance may be its bag too. */
export function wordsOf(reading: Reading): string {
  const value = numberFact(partOf(reading), 'value');
  return value === null ? '' : `${writeQuantity(value, reading.facts.value?.unit ?? '').replace(' ', '')} ${reading.kind}`;
}

/** What a new bag of it would say: `10kΩ 1% resistor`. */
export function saysOf(reading: Reading): string {
  const part = partOf(reading);
  const low = numberFact(part, 'tolerance-low');
  const even = low !== null && low === numberFact(part, 'tolerance-high') && reading.facts['tolerance-low']?.unit === 'fraction';
  const volts = numberFact(part, 'voltage');
  const [value = '', kind = ''] = wordsOf(reading).split(' ');
  return [value, even && `${plainDigits(low, 2)}%`, volts !== null && `${plainDigits(volts)}V`, kind].filter(Boolean).join(' ');
}

const MOST_BAGS = 3;
/** Classes of capacitors across the mains and to earth (IEC 60384-14): value alone never makes one. */
const SAFETY_CLASS = /^[XY][12]$/;

export interface BelongsIn {
  readonly bag: FoundBag;
  /** why it hardly belongs there, although the value agrees */
  readonly caution: 'chip' | 'safety' | null;
}

/** The bags that hold what was asked: those without a caution first, exhausted ones after full; `more` where some are left out. */
export function belongs(found: readonly FoundBag[], look: Look): { readonly bags: readonly BelongsIn[]; readonly more: boolean } {
  const bags = found
    .filter(({ full, group }) => full || group === 'exhausted')
    .map((bag) => ({ bag, caution: cautionOf(bag, look) }))
    .toSorted((a, b) => rank(a) - rank(b));
  return { bags: bags.slice(0, MOST_BAGS), more: bags.length > MOST_BAGS };
}

const rank = ({ bag, caution }: BelongsIn): number => (caution === null ? 0 : 2) + (bag.onHand > 0 ? 0 : 1);

function cautionOf({ said }: FoundBag, look: Look): BelongsIn['caution'] {
  const words = `${said.name} ${said.rest}`.split(/[\s,]+/);
  if (words.some((word) => SAFETY_CLASS.test(word))) return 'safety';
  return look === 'bands' && words.some(isChip) ? 'chip' : null;
}
