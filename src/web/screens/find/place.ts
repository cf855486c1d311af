import { useNavigate, useSearch } from '@tanstack/react-router';
import { wholeWord } from '../../address.ts';

/** What can be done with a bag in its drawer. */
export type BagDeed = 'pick' | 'return' | 'count';

const DEEDS: readonly string[] = ['pick', 'return', 'count'] satisfies readonly BagDeed[];
const isDeed = (word: string | undefined): word is BagDeed => word !== undefined && DEEDS.includes(word);

interface FindWords {
  readonly words?: string | null;
  readonly bag?: number | null;
  readonly act?: BagDeed | null;
}

/** What stands in the address of Find. */
export interface FindPlace {
  readonly words: string;
  readonly bag: number | null;
  readonly act: BagDeed | null;
  /** asks for the cursor in the field, once */
  readonly focus: boolean;
  /** what is left out stays, but for `focus`; another bag ends what was begun with the former one */
  readonly go: (change: FindWords, how?: 'push' | 'replace') => void;
}

const written = (word: string | number | null | undefined): string | undefined => (word ? String(word) : undefined);

export function useFindPlace(): FindPlace {
  const search = useSearch({ from: '/' });
  const navigate = useNavigate({ from: '/' });
  return {
    words: search.words ?? '',
    bag: wholeWord(search.bag),
    act: isDeed(search.act) ? search.act : null,
    focus: search.focus !== undefined,
    go: (change, how = 'push') =>
      void navigate({
        to: '/',
        search: (before: { readonly [Name in 'words' | 'bag' | 'act']?: string }) => {
          const act = change.act === undefined && change.bag === undefined ? before.act : written(change.act);
          const bag = change.bag === undefined ? before.bag : written(change.bag);
          const words = change.words === undefined ? before.words : written(change.words);
          return { ...(words && { words }), ...(bag && { bag }), ...(act && { act }) };
        },
        replace: how === 'replace',
        resetScroll: false,
      }),
  };
}
