import type { BoxesView } from '#api/bags.ts';
import { RECEIVE, sayWhere } from '#say/en/receive-page.ts';
import { Note } from '../../ui/note.tsx';
import { Slots } from '../../ui/slots.tsx';
import { Tag } from '../../ui/tag.tsx';
import { boxAhead } from './receive.ts';

interface AheadProps {
  readonly bag: number;
  readonly box: string;
  readonly boxes: BoxesView | undefined;
}

/** The bag that is to come, and where it will stand. */
export function AheadView({ bag, box, boxes }: AheadProps) {
  const known = boxes?.boxes.find(({ name }) => name === box);
  const ahead = known && boxAhead(known, bag);
  return (
    <section aria-label={RECEIVE.drawer}>
      <p className="nextbag">
        <Tag bag={bag} size="big" />
        <b>{RECEIVE.next}</b>
      </p>
      {box !== '' && (
        <>
          <h2>{RECEIVE.boxAhead(box)}</h2>
          {ahead ? (
            <>
              <Slots
                slots={ahead.slots}
                front={RECEIVE.front(ahead.first)}
                back={RECEIVE.back(ahead.last)}
                says={sayWhere(ahead.rank, ahead.places, ahead.after)}
              />
              <p className="s two">{sayWhere(ahead.rank, ahead.places, ahead.after)}</p>
              {ahead.full && <Note kind="check" title={RECEIVE.boxFull(box, known.places)} />}
            </>
          ) : (
            boxes && <p className="s two">{RECEIVE.boxNew(box)}</p>
          )}
        </>
      )}
    </section>
  );
}
