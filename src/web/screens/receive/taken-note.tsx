import type { BagView } from '#api/bags.ts';
import { RECEIVE } from '#say/en/receive-page.ts';
import { BagLink } from '../../ui/bag-link.tsx';
import { Button } from '../../ui/button.tsx';
import { Note } from '../../ui/note.tsx';

interface TakenNoteProps {
  readonly bag: BagView;
  /** pieces that may be added, where they are typed */
  readonly quantity: number | null;
  readonly next: number;
  readonly onAdd: () => void;
  readonly onNext: () => void;
}

/** The number stands on a bag already: add to it, or take the next free one. */
export function TakenNote({ bag, quantity, next, onAdd, onNext }: TakenNoteProps) {
  return (
    <Note
      kind="check"
      title={RECEIVE.taken(bag.bag)}
      actions={
        <>
          <Button disabled={quantity === null || quantity === 0} onClick={onAdd}>
            {RECEIVE.addTo(quantity ?? 0, bag.bag)}
          </Button>
          <Button onClick={onNext}>{RECEIVE.nextFree(next)}</Button>
        </>
      }
    >
      <BagLink bag={bag.bag} size="sm" /> {RECEIVE.takenHolds(bag.said.name, bag.box, bag.onHand)}{' '}
      {!quantity && RECEIVE.addToMany}
    </Note>
  );
}
