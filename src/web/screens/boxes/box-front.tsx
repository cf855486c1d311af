import { Link } from '@tanstack/react-router';
import { BOXES_PAGE, sayBack, sayBoxPicture, sayFill, sayFront, sayNext } from '#say/en/boxes-page.ts';
import { Icon } from '../../ui/icon.tsx';
import { Slots } from '../../ui/slots.tsx';
import { Tag } from '../../ui/tag.tsx';
import { boxSlots, isExhausted, type BoxSum } from './boxes.ts';
import type { Arranging } from './use-arranging.ts';

/** The front of one box: its letter, first and last tag, what is in it, and a look down into it. */
export function BoxFront({
  sum,
  chosen,
  arranging,
  next,
  beside,
  end,
}: {
  readonly sum: BoxSum;
  readonly chosen: boolean;
  readonly arranging: Arranging;
  /** the number that a new bag in it would take */
  readonly next: number | null;
  /** the boxes stand side by side, so it moves to the left and to the right */
  readonly beside: boolean;
  /** where it can't move further */
  readonly end: { readonly first: boolean; readonly last: boolean };
}) {
  const { box, filled, exhausted, astray, first, last } = sum;
  return (
    <li className={chosen ? 'boxfront on' : 'boxfront'} aria-current={chosen ? 'true' : undefined}>
      <div className="lid" aria-hidden="true" />
      <h3 className="letter">
        <Link
          to="/boxes"
          search={{ box: box.name }}
          resetScroll={false}
          aria-label={BOXES_PAGE.open(box.name)}
          className={box.name.length > 3 ? 'long' : undefined}
        >
          {box.name}
        </Link>
      </h3>
      <div className="range">
        {first === undefined || last === undefined ? (
          <span className="three s">{BOXES_PAGE.empty}</span>
        ) : (
          <>
            <Tag bag={first} gone={isExhausted(sum, first)} />
            {last !== first && (
              <>
                <span className="three s">{BOXES_PAGE.to}</span>
                <Tag bag={last} gone={isExhausted(sum, last)} />
              </>
            )}
          </>
        )}
      </div>
      <div className="inside">
        <p>{box.says}</p>
        <Slots
          slots={boxSlots(sum)}
          front={sayFront(first)}
          back={sayBack(last)}
          says={sayBoxPicture(box.name, filled, box.places)}
          height="1.75rem"
        />
        <p className="s two">
          {[sayFill(filled, box.places, exhausted, astray), next !== null && sayNext(next)].filter(Boolean).join(', ')}
        </p>
      </div>
      <div className="moves">
        <Move
          look={beside ? 'left' : 'up'}
          says={beside ? BOXES_PAGE.leftOf(box.name) : BOXES_PAGE.upOf(box.name)}
          cannot={arranging.busy || end.first}
          onMove={() => arranging.move(box.name, -1)}
        />
        <Move
          look={beside ? 'right' : 'down'}
          says={beside ? BOXES_PAGE.rightOf(box.name) : BOXES_PAGE.downOf(box.name)}
          cannot={arranging.busy || end.last}
          onMove={() => arranging.move(box.name, 1)}
        />
      </div>
    </li>
  );
}

interface MoveProps {
  readonly look: 'left' | 'right' | 'up' | 'down';
  readonly says: string;
  readonly cannot: boolean;
  readonly onMove: () => void;
}

/** One place further; where that can't be, the button keeps the focus and says so. */
function Move({ look, says, cannot, onMove }: MoveProps) {
  return (
    <button type="button" className={`btn ${look}`} aria-label={says} aria-disabled={cannot} onClick={() => !cannot && onMove()}>
      <Icon sign="up" />
    </button>
  );
}
