import { Link } from '@tanstack/react-router';
import { BOARD_PAGE } from '#say/en/board-page.ts';
import { Answer } from '../../ui/answer.tsx';
import { Named } from '../../ui/named.tsx';
import { useBoards } from '../../lab/answers.ts';
import type { BoardPlace } from './place.ts';

/** The address names a board, or a revision of one, that the lab does not keep. */
export function NoBoard({ place: { board, revision } }: { readonly place: BoardPlace }) {
  const known = useBoards().value?.boards.some(({ name }) => name === board) ?? false;
  if (known && revision !== undefined)
    return (
      <main id="main" className="page board">
        <Answer title={<Named says={BOARD_PAGE.noRevision(board, revision)} name={board} />}>
          <Link className="btn main" to="/boards/$board" params={{ board }}>
            {BOARD_PAGE.newest}
          </Link>
        </Answer>
      </main>
    );
  return (
    <main id="main" className="page board">
      <Answer title={<Named says={BOARD_PAGE.noBoard(board)} name={board} />} why={BOARD_PAGE.noBoardWhy}>
        <Link className="btn main" to="/boards">
          {BOARD_PAGE.toBoards}
        </Link>
      </Answer>
    </main>
  );
}
