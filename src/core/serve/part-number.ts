export type NameFit = 'same' | 'packing' | 'base' | 'differs';

/** Suffixes that say how the parts are packed or that they are free of lead, not what they are (from memory of makers' sheets). */
const PACKING =
  /(?:[-/]?(?:T\/R|TR|TRL|REEL7?|REEL|TAPE|BULK|RL|TRPBF|PBF|NOPB|CT|TUBE)|#(?:TR)?PBF|\/NOPB|-7-F|-13-F|,\d{3}|\+T?)$/;
const LOGIC_MAKER = /^(?:SN|MM|MC|HD|CD|TC|DM|M)(?=(?:54|74)[A-Z]*\d)/;
/** Numbers that name a type, not one orderable part: `BC547B`, `2N3904`, `LM358`, `74HC595`, `AMS1117-3.3`. */
const TYPE_NAME = /^(?:[1-3]N|2S[A-D]|74[A-Z]{0,4}|[A-Z]{0,5})\d{2,5}[A-Z]?(?:-\d{1,2}(?:\.\d)?)?$/;

const plain = (name: string): string => name.toUpperCase().replaceAll(/\s+/g, '').replace(LOGIC_MAKER, '');
/** Where makers of chips write how they are packed: what stands in the groups is the part (grammars of outside/ordering-codes). */
const REELS: readonly RegExp[] = [
  /^(G(?:RM|RJ|RT|CM|CJ)[A-Z0-9]{14})[BDJKL]$/,
  /^((?:RC|AC|CC)\d{4}[A-Z])[RKPS]-(?:07|10|13)([0-9RKM]+L)$/,
  /^(CL\d{2}[A-Z][0-9R]{3}[A-Z]{2}[A-Z0-9]{4})[A-Z]$/,
  /^(C\d{4}[CX]\d{3}[A-Z]\d[A-Z]AC)(?:TU|\d{4})$/,
  /^(\d{4}[A-Z0-9]{2}[0-9R]{3}[A-Z]A[TZ])[24]A$/,
  /^([A-Z]MK\d{3}[A-Z0-9]{2}[0-9R]{3}[A-Z]{2})-[TR]$/,
  /^(ERJ)-(\w+)$/,
];
const unpacked = (name: string): string => {
  const reel = REELS.map((pattern) => pattern.exec(plain(name))).find((match) => match !== null);
  return reel ? reel.slice(1).join('') : plain(name).replace(PACKING, '');
};

/** `bc547b` → `BC547B`: letter case, blanks and a maker's head on logic numbers say nothing. */
export function plainNumber(name: string): string {
  return plain(name);
}

/** The same without what only says how the parts are packed: `LM358D/TR` → `LM358D`. */
export function unpackedNumber(name: string): string {
  return unpacked(name);
}

/** A number that is a type made by many, in several packages: `LM358` yes, `LM358DR` no. */
export function isTypeName(name: string): boolean {
  return TYPE_NAME.test(plain(name));
}

/**
 * How a bag's part number answers a line's: `bc547b`, `BC547B` → same; `LM358DR`, `LM358D/TR` … → packing;
 * `LM358DR`, `LM358` → base; `LM3580`, `LM358` → differs.
 */
export function nameFit(has: string, asked: string): NameFit {
  if (plain(has) === plain(asked)) return 'same';
  const [a, b] = [unpacked(has), unpacked(asked)];
  if (a === b) return 'packing';
  return extendsName(a, b) || extendsName(b, a) ? 'base' : 'differs';
}

function extendsName(long: string, short: string): boolean {
  if (short.length < 4 || !/\d/.test(short) || !/[A-Z]/.test(short) || !long.startsWith(short)) return false;
  return !/^\d/.test(long.slice(short.length));
}
