const SAME: Readonly<Record<string, string>> = {
  '\u03bc': '\u00b5',
  '\u2126': '\u03a9',
  '\u212a': 'K',
  '−': '-',
  '–': '-',
  '—': '-',
  '‐': '-',
  '‑': '-',
  '×': 'x',
  '∗': '*',
  '＊': '*',
  '“': '"',
  '”': '"',
  '″': '"',
  '„': '"',
  '’': "'",
  '‘': "'",
  '\u00a0': ' ',
  '\u2007': ' ',
  '\u2009': ' ',
  '\u202f': ' ',
  '\u3000': ' ',
  '\t': ' ',
  '\n': ' ',
  '\r': ' ',
  '：': ':',
  '\u2044': '/',
  '\u2215': '/',
};

const CONTROLS = /\p{Cf}/gu;

/** The text without marks that nobody sees (Unicode Cf: direction, joiners, soft hyphens, byte order): `"1\u202e0k\u200b"` → `"10k"`. */
export function withoutControls(text: string): string {
  return text.replace(CONTROLS, '');
}

/** `1·5 kΩ`: the point as it was set in Britain (common practice, no source). */
const RAISED_POINT = /(?<=\d)\u00b7(?=\d)/g;

/**
 * The same text in the characters that the readers know, one for one, so that places in it stay true: full-width forms,
 * the two micro and two ohm signs (U+00B5/U+03BC, U+2126/U+03A9), dashes and blanks. `"４．７ｋΩ"` → `"4.7kΩ"`.
 */
export function plainText(text: string): string {
  // oxlint-disable-next-line no-control-regex -- the printable ASCII needs no work, and is nearly all that comes
  if (/^[\x20-\x7e]*$/.test(text)) return text;
  let plain = '';
  for (const char of text) plain += plainChar(char);
  return plain.replace(RAISED_POINT, '.');
}

function plainChar(char: string): string {
  const code = char.codePointAt(0) ?? 0;
  if (code >= 0xff01 && code <= 0xff5e) return String.fromCodePoint(code - 0xfee0);
  return SAME[char] ?? char;
}

/** Controls, ends of lines, overrides and isolates of direction, halves of characters: none of them can be typed or told apart. */
const NEVER = /[\p{Cc}\p{Zl}\p{Zp}\p{Cs}\u202a-\u202e\u2066-\u2069]/u;
/** What takes no ink, the fillers of Hangul and the empty Braille cell too. */
const UNSEEN = /[\s\p{Cf}\p{Zs}\p{Mn}\p{Me}\u115f\u1160\u3164\uffa0\u2800]/gu;

/** A name that can be seen, typed and opened as an address: `logger v1.2`; neither `..`, nor U+200B alone, nor one that turns the text around. */
export function isPlainName(text: string): boolean {
  return !NEVER.test(text) && !/^\s*\.{0,2}\s*$/.test(text.replace(UNSEEN, ''));
}
