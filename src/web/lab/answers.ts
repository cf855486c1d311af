import { keepPreviousData, QueryClient, useQuery } from '@tanstack/react-query';
import type { ActView } from '#api/acts.ts';
import type { BagView, BagWithHistory, BoxesView, FoundAnswer, PartReading } from '#api/bags.ts';
import type { BoardLines, BoardReach, BoardView, LineDetail } from '#api/boards.ts';
import type { DevicesView } from '#api/devices.ts';
import type { DraftView } from '#api/drafts.ts';
import type { BuildView, KitView } from '#api/kits.ts';
import type { LabView } from '#api/lab.ts';
import { address, ask, troubleOf, Unanswered, type Trouble } from './ask.ts';
import { changes } from './changes.ts';
import { MOST_FOUND } from './questions.ts';

/** What is known of a question. `value` stays while it is asked again; `waiting` only before the first answer. */
export interface Asked<T> {
  readonly value: T | undefined;
  readonly waiting: boolean;
  /** a newer answer is on its way */
  readonly asking: boolean;
  readonly trouble: Trouble | null;
}

export const queries = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: Number.POSITIVE_INFINITY,
      refetchOnWindowFocus: false,
      retryDelay: 1500,
      retry: (times, error) =>
        times < 1 &&
        error instanceof Unanswered &&
        error.trouble.kind === 'refused' &&
        error.trouble.problem.code === 'wire-change-ahead',
      networkMode: 'always',
    },
    mutations: { networkMode: 'always' },
  },
});

/** Every answer on the page is asked again when the lab changes, or is heard again. */
export function followLab(): void {
  let seen = changes.snapshot();
  changes.subscribe(() => {
    const now = changes.snapshot();
    const back = now.connected && !seen.connected;
    const moved = now.change !== seen.change && seen.change >= 0;
    seen = now;
    if (back || moved) void queries.invalidateQueries();
  });
  changes.follow();
}

/** Asks an address, and again after each change. `null` asks nothing; `keep` shows the former answer until the next one comes. */
export function useAnswer<T>(question: string | null, { keep = false }: { readonly keep?: boolean } = {}): Asked<T> {
  const { data, isPending, isFetching, error } = useQuery({
    queryKey: ['lab', question],
    queryFn: ({ signal }) => ask<T>(question ?? '', { signal }),
    enabled: question !== null,
    ...(keep && { placeholderData: keepPreviousData }),
  });
  return {
    value: data,
    waiting: isPending && question !== null && !error,
    asking: isFetching,
    trouble: troubleOf(error),
  };
}

export const useLab = (): Asked<LabView> => useAnswer('/api/lab');
export const useFound = (words: string): Asked<FoundAnswer> =>
  useAnswer(words.trim() ? address('/api/find', { words: words.trim(), limit: MOST_FOUND + 1 }) : null, { keep: true });
export const useBags = (): Asked<{ readonly bags: readonly BagView[] }> => useAnswer('/api/bags');
export const useTouched = (): Asked<{ readonly bags: readonly BagView[] }> => useAnswer('/api/bags/touched');
export const useBag = (bag: number | null): Asked<BagWithHistory> =>
  useAnswer(bag === null ? null : `/api/bags/${bag}`, { keep: true });
export const useBoxes = (): Asked<BoxesView> => useAnswer('/api/boxes');
export const usePartReading = (says: string): Asked<PartReading> =>
  useAnswer(says.trim() ? address('/api/read-part', { says: says.trim() }) : null, { keep: true });
export const useActs = (limit: number): Asked<{ readonly acts: readonly ActView[] }> =>
  useAnswer(address('/api/acts', { limit }), { keep: true });

export const useBoards = (): Asked<{ readonly boards: readonly BoardView[] }> => useAnswer('/api/boards');
export const useReach = (): Asked<{ readonly boards: readonly BoardReach[] }> => useAnswer('/api/boards/reach', { keep: true });
export const useBoardLines = (board: string, boards: number, revision?: string): Asked<BoardLines> =>
  useAnswer(address(`/api/boards/${encodeURIComponent(board)}/lines`, { boards, revision }), { keep: true });
export const useLine = (
  board: string,
  row: number | null,
  { bag, revision }: { readonly bag?: number; readonly revision?: string } = {},
): Asked<LineDetail> =>
  useAnswer(row === null ? null : address(`/api/boards/${encodeURIComponent(board)}/lines/${row}`, { bag, revision }), {
    keep: true,
  });

export const useKits = (): Asked<{ readonly builds: readonly BuildView[] }> => useAnswer('/api/kits');
const kitPath = (build: string): string => `/api/kits/${encodeURIComponent(build)}`;
export const useKit = (build: string): Asked<KitView> => useAnswer(kitPath(build));
/** The kit as it was answered last, for what goes on after an act: its page may not be drawn anew yet. */
export const kitNow = (build: string): KitView | undefined => queries.getQueryData<KitView>(['lab', kitPath(build)]);

export const useDraft = (draft: string): Asked<DraftView> => useAnswer(`/api/drafts/${encodeURIComponent(draft)}`);
export const useDevices = (): Asked<DevicesView> => useAnswer('/api/devices');
