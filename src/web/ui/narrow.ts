import { useSyncExternalStore } from 'react';

/** Below this the drawer stands under or over the list, not beside it; the style sheets say the same. */
const NARROW = '(width < 70rem)';

function follow(media: string): { subscribe: (told: () => void) => () => void; now: () => boolean } {
  const query = matchMedia(media);
  return {
    subscribe: (told) => {
      query.addEventListener('change', told);
      return () => query.removeEventListener('change', told);
    },
    now: () => query.matches,
  };
}

const narrow = follow(NARROW);
const print = follow('print');

export const isNarrow = (): boolean => narrow.now();
export const useNarrow = (): boolean => useSyncExternalStore(narrow.subscribe, narrow.now);
/** Whether the page is on its way to paper, which shows all that scrolls on a screen. */
export const usePrinting = (): boolean => useSyncExternalStore(print.subscribe, print.now);
