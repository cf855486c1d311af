import type { Gloss as Piece } from '#api/bags.ts';
import { UI } from '#say/en/ui.ts';

const LOOK: Readonly<Record<Piece['how'], string | undefined>> = {
  read: undefined,
  doubt: 'doubt',
  unread: 'unread',
  filled: 'added',
};

/** What was typed above, what it was read as below. */
export function Gloss({ pieces }: { readonly pieces: readonly Piece[] }) {
  if (pieces.length === 0) return null;
  return (
    <p className="gloss">
      <span className="vh">{UI.readAs}</span>
      {pieces.map((piece) => (
        <span key={`${piece.typed} ${piece.means}`} className={LOOK[piece.how]}>
          <i>{piece.typed}</i>
          <b>{piece.means}</b>
        </span>
      ))}
    </p>
  );
}
