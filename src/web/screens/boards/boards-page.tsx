import { useNavigate, useSearch } from '@tanstack/react-router';
import { BOARDS_PAGE, SAY_EACH_ALONE, SAY_WORKING_OUT, sayBoards } from '#say/en/boards-page.ts';
import { useBoards, useReach } from '../../lab/answers.ts';
import { useBring, type Bringing } from '../../lab/bring.ts';
import { Answer } from '../../ui/answer.tsx';
import { useKeys } from '../../ui/keys.ts';
import { Note } from '../../ui/note.tsx';
import { useNow } from '../../ui/now.ts';
import { usePageDrop } from '../../ui/page-drop.ts';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { OpenDrafts } from '../draft/open-drafts.tsx';
import { BoardDrawer } from './board-drawer.tsx';
import { BoardTable } from './board-rows.tsx';
import { canBuild, entriesOf, nextName, type BoardEntry } from './boards.ts';
import { BringBom, BringTrouble } from './bring-bom.tsx';
import './boards.css';

/** The boards that the lab keeps, how many of each can be built, and the way in for a new one. */
export function BoardsPage() {
  const boards = useBoards();
  const reach = useReach();
  const bringing = useBring('bom');
  const over = usePageDrop(bringing.bring);
  const known = boards.value?.boards;
  const entries = entriesOf(known ?? [], reach.value?.boards);
  const can = canBuild(entries);
  const why = !known || known.length === 0 ? null : can === null && !reach.trouble ? SAY_WORKING_OUT : SAY_EACH_ALONE;
  return (
    <main id="main" className={over ? 'page boards dropping' : 'page boards'}>
      {known ? (
        <Boards entries={entries} bringing={bringing} over={over} title={sayBoards(known.length, can)} why={why} />
      ) : (
        <Answer title={BOARDS_PAGE.reading} />
      )}
      <TroubleNote trouble={boards.trouble ?? reach.trouble} />
    </main>
  );
}

interface BoardsProps {
  readonly entries: readonly BoardEntry[];
  readonly bringing: Bringing;
  readonly over: boolean;
  readonly title: string;
  readonly why: string | null;
}

function Boards({ entries, bringing, over, title, why }: BoardsProps) {
  const { board } = useSearch({ from: '/boards' });
  const navigate = useNavigate();
  const now = useNow();
  const choose = (name: string | null): void => {
    if (name !== null) void navigate({ to: '/boards', search: { board: name }, replace: true, resetScroll: false });
  };
  const chosen = entries.find(({ name }) => name === board) ?? entries[0];
  useKeys({
    ArrowDown: () => choose(nextName(entries, board, 1)),
    ArrowUp: () => choose(nextName(entries, board, -1)),
  });
  return (
    <div className={chosen ? 'split' : undefined}>
      <div>
        <Answer title={title} why={why}>
          <BringBom bringing={bringing} over={over} />
        </Answer>
        <BringTrouble bringing={bringing} />
        <OpenDrafts is="bom" />
        {chosen ? (
          <>
            <div className="col">
              <BoardTable entries={entries} chosen={chosen.name === board ? board : undefined} now={now} onChoose={choose} />
            </div>
            <KeyHints />
          </>
        ) : (
          <Note title={BOARDS_PAGE.noneWhy} />
        )}
      </div>
      {chosen && <BoardDrawer entry={chosen} now={now} />}
    </div>
  );
}

function KeyHints() {
  const { keys } = BOARDS_PAGE;
  return (
    <p className="keys">
      <span>
        <kbd>↑</kbd> <kbd>↓</kbd> {keys.row}
      </span>
      <span>
        <kbd>Enter</kbd> {keys.open}
      </span>
    </p>
  );
}
