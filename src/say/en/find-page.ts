/** What the page that finds bags says. */

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

export const FIND_PAGE = {
  field: 'Find a part or a bag',
  help: 'Works too: 0.1u 50v, M3x8, bag 114, a part number',
  looking: 'Looking…',
  failed: 'The lab did not answer.',
  failedWhy: (why: string) => `${why}. What you typed is still here; type on to ask again.`,
  caption: (words: string) => `Bags that answer to ${words}`,
  columns: { bag: 'Bag', what: 'What it is', why: 'Why', code: 'Part code', box: 'Box', onHand: 'On hand', free: 'Free' },
  free: 'free',
  bag: 'bag ',
  groups: { onHand: 'As you typed it', near: 'Near it', exhausted: 'Exhausted' },
  skip: 'Skip to the work',
  jobs: 'Jobs',
  find: 'Find',
} as const;

/** How many bags with something in them answer all that was typed: the page's one sentence. */
export function sayFoundCount(full: number, near: number, exhausted: number): string {
  if (full > 0) return `${counted(full, 'bag answers', 'bags answer')}.`;
  if (near > 0) return 'Nothing here answers all of that; this is near it.';
  return exhausted > 0 ? 'All of these are exhausted.' : 'Nothing here answers to that.';
}

/** What the lab holds, before anything is typed. */
export function sayLab(bags: number, boxes: number): string {
  return `${counted(bags, 'bag', 'bags')} in ${counted(boxes, 'box', 'boxes')}.`;
}

export function sayExhausted(exhausted: number): string {
  return `${exhausted ? `${counted(exhausted, 'bag', 'bags')} exhausted. ` : ''}Type what you look for, in any notation.`;
}

export const FIRST_RUN = {
  title: 'This lab is empty.',
  lead: 'Begin with one of these in a terminal; this page follows by itself.',
  ways: [
    ['bin/bagatelle.js demo', 'fills it with a demo lab, to try everything without fear'],
    [
      'bin/bagatelle.js import LIST.csv --dry-run',
      'shows what your own list would become; without --dry-run it takes it in, and undo takes it back',
    ],
    ['bin/bagatelle.js receive "100 4k7 1% 0805"', 'takes one bag in'],
    ['bin/bagatelle.js restore FILE', 'brings a lab back from its backup'],
  ],
} as const;
