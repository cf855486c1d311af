import { useRef, useState } from 'react';
import type { Warned } from '#api/acts.ts';
import type { BoardLine } from '#api/boards.ts';
import { sayDone } from '#say/en/board-line.ts';
import { useAct } from '../../lab/act.ts';
import type { Trouble } from '../../lab/ask.ts';

interface ChoiceBody {
  readonly demand: string;
  readonly bag: number | null;
  readonly accept: boolean;
  readonly row: number;
  readonly reason?: string;
}
interface LaterBody {
  readonly demand: string;
  readonly later: boolean;
  readonly row: number;
}
interface Answer {
  readonly id: string;
  readonly warnings: readonly Warned[];
}

/** The latest act of this page, which can be undone here. */
export interface LatestAct {
  readonly act: string;
  readonly says: string;
  readonly warnings: readonly Warned[];
  readonly undone: boolean;
}

type Named = Pick<BoardLine, 'row' | 'demand'>;

export interface BoardActs {
  readonly accept: (line: Named, bag: number) => Promise<void>;
  readonly take: (line: Named, bag: number, reason: string) => Promise<void>;
  readonly free: (line: Named) => Promise<void>;
  readonly later: (line: Named, later: boolean) => Promise<void>;
  readonly undo: () => Promise<void>;
  readonly latest: LatestAct | null;
  readonly busy: boolean;
  readonly trouble: Trouble | null;
  readonly again: () => void;
}

/** What can be done with a line of a board. */
export function useBoardActs(board: string): BoardActs {
  const path = `/api/boards/${encodeURIComponent(board)}`;
  const choice = useAct<ChoiceBody, Answer>(`${path}/choices`);
  const later = useAct<LaterBody, Answer>(`${path}/later`);
  const undo = useAct<{ readonly act: string }, Answer>('/api/undo');
  const [latest, setLatest] = useState<LatestAct | null>(null);
  const acts = [choice, later, undo];
  const failed = acts.find(({ trouble }) => trouble !== null);
  // what the answer means for the page; a second try of the same act means the same
  const meaning = useRef<(answer: Answer) => void>(() => undefined);
  const settle = async (doing: Promise<Answer | null>): Promise<void> => {
    const answer = await doing;
    if (answer) meaning.current(answer);
  };
  const book = async (says: string, run: () => Promise<Answer | null>): Promise<void> => {
    for (const act of acts) act.forget();
    meaning.current = ({ id, warnings }) => setLatest({ act: id, says, warnings, undone: false });
    await settle(run());
  };
  const choose = (says: string, body: ChoiceBody): Promise<void> => book(says, () => choice.run(body));
  return {
    accept: ({ row, demand }, bag) => choose(sayDone({ kind: 'accepted', bag, row }), { row, demand, bag, accept: true }),
    take: ({ row, demand }, bag, reason) => {
      const said = reason.trim();
      return choose(sayDone({ kind: 'taken', bag, row }), {
        row,
        demand,
        bag,
        accept: true,
        ...(said !== '' && { reason: said }),
      });
    },
    free: ({ row, demand }) => choose(sayDone({ kind: 'freed', row }), { row, demand, bag: null, accept: true }),
    later: ({ row, demand }, wanted) =>
      book(sayDone({ kind: wanted ? 'later' : 'again', row }), () => later.run({ row, demand, later: wanted })),
    undo: async () => {
      if (!latest) return;
      for (const act of acts) act.forget();
      meaning.current = ({ warnings }) => setLatest({ ...latest, warnings, undone: true });
      await settle(undo.run({ act: latest.act }));
    },
    latest,
    busy: acts.some(({ busy }) => busy),
    trouble: failed?.trouble ?? null,
    again: () => {
      if (failed) void settle(failed.again());
    },
  };
}
