import bwipjs from 'bwip-js/node';

/** A text as a QR code: rows of `0` and `1` (dark), without the light border of four squares that a reader wants around it. */
export function qrSquares(text: string): string[] {
  // the package's default export is meant: its named `raw` draws another kind of code
  const [code] = bwipjs.raw('qrcode', text, 'eclevel=M');
  if (!code || !('pixs' in code)) throw new Error('a QR code is squares');
  const { pixs, pixx, pixy } = code;
  return Array.from({ length: pixy }, (_, row) => pixs.slice(row * pixx, (row + 1) * pixx).join(''));
}
