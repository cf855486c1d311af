import { fault, type Read } from './plain.ts';

export interface DecodedText {
  readonly text: string;
  readonly encoding: string;
  readonly guessed: boolean;
}

/** First bytes of common files that are no text (Latin-1), with what to call them. */
const SIGNATURES: readonly (readonly [string, string])[] = [
  ['\x89PNG', 'a PNG picture'],
  ['\xff\xd8\xff', 'a JPEG picture'],
  ['GIF8', 'a GIF picture'],
  ['RIFF', 'a picture or sound file'],
  ['%PDF', 'a PDF'],
  ['PK\x03\x04', 'a zipped file such as an .xlsx workbook: save it as CSV'],
  ['\xd0\xcf\x11\xe0', 'an old binary workbook: save it as CSV'],
  ['\x1f\x8b', 'a gzip archive'],
  ['7z\xbc\xaf', 'a 7z archive'],
  ['SQLite format 3', 'a database'],
];

/**
 * Bytes to text: UTF-8 or UTF-16 by byte order mark, else UTF-8 if it holds, else windows-1252 as a guess.
 * `[0x31, 0x30, 0xb5, 0x46]` → `10µF`, guessed.
 */
export function decodeText(bytes: Uint8Array): Read<DecodedText> {
  if (bytes.length === 0) return fault('file-empty');
  const looksLike = signature(bytes);
  if (looksLike) return fault('file-binary', { looksLike });
  const marked = byMark(bytes);
  if (marked) return checked(marked, bytes, false);
  if (bytes.includes(0)) {
    const wide = unmarkedWide(bytes);
    return wide ? checked(wide, bytes, true) : fault('file-binary', { looksLike: 'binary data (it holds NUL bytes)' });
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return checked('utf-8', text, false);
  } catch {
    return checked('windows-1252', bytes, true);
  }
}

function signature(bytes: Uint8Array): string | null {
  const start = String.fromCharCode(...bytes.subarray(0, 16));
  return SIGNATURES.find(([mark]) => start.startsWith(mark))?.[1] ?? null;
}

function byMark(bytes: Uint8Array): string | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  return null;
}

/** UTF-16 without a mark: every second byte of the start is NUL. */
function unmarkedWide(bytes: Uint8Array): string | null {
  const start = bytes.subarray(0, Math.min(400, bytes.length & ~1));
  const nuls = [0, 0];
  start.forEach((byte, at) => {
    if (byte === 0) nuls[at % 2] = (nuls[at % 2] ?? 0) + 1;
  });
  const [even = 0, odd = 0] = nuls;
  const half = start.length / 2;
  if (half < 4) return null;
  if (odd > half * 0.8 && even === 0) return 'utf-16le';
  return even > half * 0.8 && odd === 0 ? 'utf-16be' : null;
}

function checked(encoding: string, source: Uint8Array | string, guessed: boolean): Read<DecodedText> {
  const text = typeof source === 'string' ? source : new TextDecoder(encoding).decode(source);
  if (text.includes('\0')) return fault('file-binary', { looksLike: 'binary data (it holds NUL characters)' });
  if (controls(text) > text.length / 100) return fault('file-binary', { looksLike: 'binary data' });
  if (text.trim() === '') return fault('file-empty');
  return { ok: true, value: { text: lineEnds(text), encoding, guessed } };
}

/** How many control characters stand in the text that no table holds. */
function controls(text: string): number {
  // eslint-disable-next-line no-control-regex -- these are the ones looked for
  return text.match(/[\x01-\x08\x0e-\x1f]/g)?.length ?? 0;
}

/** `\r\n` → `\n`; a file with only `\r` gets `\n`, so that it has lines at all. The count of `\n` never changes otherwise. */
function lineEnds(text: string): string {
  return text.includes('\n') ? text.replaceAll('\r\n', '\n') : text.replaceAll('\r', '\n');
}
