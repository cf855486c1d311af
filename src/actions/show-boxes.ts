import { shelfOf, type BagStanding } from '#core/stock/shelf.ts';
import type { Box, Stock } from '#core/stock/stock.ts';
import { sayBox } from '#say/en/boxes.ts';

/** A box as a person sees it on the shelf. */
interface ShownBox extends Box {
  readonly says: string;
  readonly bags: readonly BagStanding[];
}

export interface ShownBoxes {
  readonly boxes: readonly ShownBox[];
  readonly loose: readonly (BagStanding & { readonly place: string | null })[];
}

/** All boxes as they stand, with what is in each in a few words. */
export function showBoxes(stock: Stock): ShownBoxes {
  const { boxes, loose } = shelfOf(stock);
  return { boxes: boxes.map(({ box, bags, kinds }) => ({ ...box, says: sayBox(kinds), bags })), loose };
}
