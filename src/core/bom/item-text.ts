import type { Doubt } from '#core/part/doubt.ts';
import { readRefs } from './refs.ts';
import { readQuantity } from './quantity.ts';

/** A line of a list in free words: its references and count, and what is left to say what it is. */
export interface ItemText {
  readonly refs: readonly string[];
  readonly quantity: number | null;
  readonly text: string;
  readonly doubts: readonly Doubt[];
}

const UNIT_WORD =
  /^(?:[pnuµμmkKMGR]|[pnuµμmkKMG]?(?:F|H|Hz|Ω|V|W|A)|[kM]?ohms?|mm|cm|m|inch|"|%|pin|way|bit|port|zoll|volts?|watts?|ampere)\b/iu;

/**
 * `3 push buttons` → 3; `10k resistor: R1, R2` → R1 R2; `push button (2)` → 2; `2x LED red` → 2; `C1, C2 100n` → C1 C2; `100 ohm resistor` → no count, since 100 has a unit.
 */
export function readItemText(text: string): ItemText {
  const counted = leadingCount(text) ?? trailingCount(text) ?? { quantity: null, rest: text, doubts: [] };
  const leading = readLeadingRefs(counted.rest);
  const led = leading.refs.length > 0 ? leading : readTrailingRefs(counted.rest);
  return { refs: led.refs, quantity: counted.quantity, text: led.rest, doubts: [...counted.doubts, ...led.doubts] };
}

interface Counted {
  readonly quantity: number | null;
  readonly rest: string;
  readonly doubts: readonly Doubt[];
}

function leadingCount(text: string): Counted | null {
  const marked =
    /^(\d{1,5})\s?(?:[x×*]|pcs\.?|pieces|stk\.?|st\.?|stück)\s+(\S.*)$/iu.exec(text) ?? /^[x×](\d{1,5})\s+(\S.*)$/iu.exec(text);
  if (marked) return counted(marked[1] ?? '', marked[2] ?? '');
  const bare = /^(\d{1,2}|100)\s+(\S.*)$/.exec(text);
  return bare && !UNIT_WORD.test(bare[2] ?? '') ? counted(bare[1] ?? '', bare[2] ?? '') : null;
}

function trailingCount(text: string): Counted | null {
  const found =
    /^(.*\S)\s*(?:\(\s*[x×]?\s*(\d{1,5})\s*(?:[x×]|pcs\.?|pieces|stk\.?|st\.?|stück)?\s*\)|\s[x×]\s?(\d{1,5})|\s(\d{1,5})\s?(?:x|×|pcs\.?|pieces|stk\.?|stück))$/iu.exec(
      text,
    );
  return found ? counted(found[2] ?? found[3] ?? found[4] ?? '', found[1] ?? '') : null;
}

function counted(digits: string, rest: string): Counted {
  const { quantity, doubts } = readQuantity(digits);
  return { quantity, rest, doubts };
}

const LEAD = /^([A-Z]{1,4}\d{1,4}[A-Z]?(?:\s*[-–]\s*[A-Z]{0,4}\d{1,4})?)(?![\w.%])/;
/** classes of references that are no values and no part numbers (IEEE 315, and habits) */
const CLASS = /^(?:R|C|L|D|Q|U|IC|J|JP|LED|SW|S|K|F|FB|X|Y|T|TR|BT|P|H|M|RV|VR|RN|TP|CN|CON|ZD|BZ|LS|MK|XTAL)\d/;

/** References that lead a text: `C1, C2 100n` → C1 C2, rest `100n`. After a blank alone only one of the same class goes on. */
export function readLeadingRefs(text: string): { refs: readonly string[]; rest: string; doubts: readonly Doubt[] } {
  const pieces: string[] = [];
  let rest = text.trim();
  let separator = '';
  for (;;) {
    const piece = LEAD.exec(rest)?.[1];
    const same = /^[A-Z]+/.exec(pieces[0] ?? piece ?? '')?.[0] === /^[A-Z]+/.exec(piece ?? '')?.[0];
    if (!piece || !CLASS.test(piece) || (!same && !/[,;/&+]/.test(separator))) break;
    pieces.push(piece);
    separator = /^[\s,;/&+]*/.exec(rest.slice(piece.length))?.[0] ?? '';
    rest = rest.slice(piece.length + separator.length);
  }
  if (pieces.length === 0) return { refs: [], rest: text, doubts: [] };
  const { refs, doubts } = readRefs(pieces.join(', '));
  return { refs, rest: rest.replace(/^[:=\-–]\s*/, ''), doubts };
}

/** References that end a text, after a colon, an equals sign or in brackets: `10k resistor (R1-R4)` → R1 … R4. */
function readTrailingRefs(text: string): { refs: readonly string[]; rest: string; doubts: readonly Doubt[] } {
  const [, before = '', after = ''] = /^(.*\S)\s*(?:[:=([]|\s[-–])\s*([A-Z]{1,4}\d[A-Z\d\s,;&+–-]*?)[)\]]?$/.exec(text) ?? [];
  const found = readLeadingRefs(after);
  return before && found.refs.length > 0 && found.rest === '' ? { ...found, rest: before } : { refs: [], rest: text, doubts: [] };
}
