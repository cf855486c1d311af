/** Light squares round the code: four, by ISO/IEC 18004:2015, 6.3.8. */
const QUIET = 4;

/** A QR code from its squares, rows of 0 and 1; dark on light in both schemes, since cameras want it so. */
export function Qr({ squares, says }: { readonly squares: readonly string[]; readonly says: string }) {
  const size = squares.length + 2 * QUIET;
  const dark = squares
    .flatMap((row, y) => Array.from(row).flatMap((square, x) => (square === '1' ? [`M${x + QUIET} ${y + QUIET}h1v1h-1z`] : [])))
    .join('');
  return (
    <svg className="qrcode" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={says} shapeRendering="crispEdges">
      <rect className="light" width={size} height={size} />
      <path className="dark" d={dark} />
    </svg>
  );
}
