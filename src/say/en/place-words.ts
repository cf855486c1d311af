/** Where a bag stands in its box, in words for a hand that reaches in. */

export interface StandsAt {
  /** from 1, front first */
  readonly rank: number;
  readonly of: number;
}

const FIFTHS = ['near the front', 'before the middle', 'in the middle', 'behind the middle', 'near the back'] as const;

/** `near the back` */
export function sayDepth({ rank, of }: StandsAt): string {
  if (rank === 1) return 'at the front';
  if (rank === of) return 'at the back';
  const share = (rank - 1) / (of - 1);
  return FIFTHS[Math.min(FIFTHS.length - 1, Math.floor(share * FIFTHS.length))] ?? FIFTHS[0];
}

/** `Box B` for a letter, `Box Cellar shelf`, else the name as it is where it says box itself. */
export const sayBoxName = (box: string): string => (/^box\b/i.test(box) ? box : `Box ${box}`);

/** `54th of 60` */
export const sayRank = ({ rank, of }: StandsAt): string => `${ordinal(rank)} of ${of}`;

export function ordinal(number: number): string {
  const tens = number % 100;
  if (tens >= 11 && tens <= 13) return `${number}th`;
  return `${number}${['th', 'st', 'nd', 'rd'][number % 10] ?? 'th'}`;
}

/** `11th of 60, near the front, after 130` */
export function sayStands({ after, ...at }: StandsAt & { readonly after: number | null }): string {
  return `${sayRank(at)}, ${sayDepth(at)}${after === null ? '' : `, after ${after}`}`;
}
