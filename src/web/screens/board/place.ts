import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { unlessMoved, wholeWord } from '../../address.ts';
import { useStillHere } from '../../still-here.ts';

/** What stands in the address of a board. */
export interface BoardWords {
  readonly boards?: string;
  readonly revision?: string;
  readonly row?: string;
  readonly bag?: string;
  readonly show?: string;
}

/** A word that is null leaves the address. */
export type BoardChange = { readonly [Name in keyof BoardWords]?: string | null };

export interface BoardPlace {
  readonly board: string;
  readonly boards: number;
  readonly revision: string | undefined;
  readonly row: number | null;
  /** the bag that is put beside the line, where it is not its own */
  readonly bag: number | null;
  readonly others: boolean;
  readonly go: (change: BoardChange, how?: 'push' | 'replace') => void;
  /** after an act on the line that is chosen now: the bag beside it goes */
  readonly acted: () => void;
}

export const MOST_BOARDS = 10_000;

export function changed(words: BoardWords, change: BoardChange): BoardWords {
  const next: Record<string, string> = { ...words };
  for (const [name, value] of Object.entries(change)) {
    if (value === null || value === undefined) delete next[name];
    else next[name] = value;
  }
  return next;
}

/** Another line: what was looked at beside the former one goes. */
export const toRow = (row: number): BoardChange => ({ row: String(row), bag: null, show: null });

/** The words after an act that was begun at `before`. */
export const afterAct = (now: BoardWords, before: BoardWords): BoardWords =>
  unlessMoved(now, before, ['row', 'bag'], (words) => changed(words, { bag: null, show: null }));

export function useBoardPlace(): BoardPlace {
  const { board } = useParams({ from: '/boards/$board' });
  const words = useSearch({ from: '/boards/$board' });
  const navigate = useNavigate();
  const stillHere = useStillHere();
  const to = (search: (now: BoardWords) => BoardWords, replace: boolean): void =>
    void navigate({ to: '/boards/$board', params: { board }, search, replace, resetScroll: false });
  return {
    board,
    boards: wholeWord(words.boards, 1, MOST_BOARDS) ?? 1,
    revision: words.revision,
    row: wholeWord(words.row),
    bag: wholeWord(words.bag),
    others: words.show === 'others',
    go: (change, how = 'push') => to((now) => changed(now, change), how === 'replace'),
    acted: () => {
      if (words.bag !== undefined && stillHere()) to((now) => afterAct(now, words), true);
    },
  };
}
