import type { Terminal } from './terminal.ts';

/** Light squares around a code, which a reader needs (ISO/IEC 18004: four). */
const BORDER = 4;

/** A QR code as lines of text, two rows of squares to a line; light squares are drawn, since most terminals are dark. */
export function qrLines(squares: readonly string[]): string[] {
  const wide = (squares[0]?.length ?? 0) + 2 * BORDER;
  const light = Array.from({ length: BORDER }, () => '0'.repeat(wide));
  const rows = [...light, ...squares.map((row) => `${'0'.repeat(BORDER)}${row}${'0'.repeat(BORDER)}`), ...light];
  const lines: string[] = [];
  for (let at = 0; at < rows.length; at += 2) {
    const [upper = '', lower = ''] = [rows[at], rows[at + 1]];
    lines.push(Array.from(upper, (square, column) => half(square === '0', lower[column] === '0')).join(''));
  }
  return lines;
}

function half(upper: boolean, lower: boolean): string {
  return upper ? (lower ? '█' : '▀') : lower ? '▄' : ' ';
}

/** Prints a QR code, white on black where the terminal shows colours, whatever its own are. */
export function printQr(terminal: Terminal, squares: readonly string[]): void {
  for (const line of qrLines(squares)) terminal.out(terminal.paint(['whiteBright', 'bgBlack'], line));
}
