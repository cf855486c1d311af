import { Link } from '@tanstack/react-router';
import { BOXES_PAGE, sayBack, sayBoxPicture, sayFill, sayFront, sayNext } from '#say/en/boxes-page.ts';
import { Icon } from '../../ui/icon.tsx';
import { Slots } from '../../ui/slots.tsx';
import { Tag } from '../../ui/tag.tsx';
import { boxSlots, type BoxSum } from './boxes.ts';
import type { Arranging } from './use-arranging.ts';

/** The front of one box: its letter, first and last tag, what is in it, and a look down into it. */
export function BoxFront({
  sum,
  chosen,
  arranging,
  next,
}: {
  readonly sum: BoxSum;
  readonly chosen: boolean;
  readonly arranging: Arranging;
  /** the number that a new bag in it would take */
  readonly next: number | null;
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
            <Tag bag={first} />
            {last !== first && (
              <>
                <span className="three s">{BOXES_PAGE.to}</span>
                <Tag bag={last} />
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
        <button
          type="button"
          className="btn"
          aria-label={BOXES_PAGE.upOf(box.name)}
          disabled={arranging.busy}
          onClick={() => arranging.move(box.name, -1)}
        >
          <Icon sign="up" />
        </button>
        <button
          type="button"
          className="btn flip"
          aria-label={BOXES_PAGE.downOf(box.name)}
          disabled={arranging.busy}
          onClick={() => arranging.move(box.name, 1)}
        >
          <Icon sign="up" />
        </button>
      </div>
    </li>
  );
}
