import { Link } from '@tanstack/react-router';
import { useState, type FormEvent } from 'react';
import type { LineDetail } from '#api/boards.ts';
import { BOARD_LINE, sayFirstReasons } from '#say/en/board-line.ts';
import { BOARD_PAGE } from '#say/en/board-page.ts';
import { figures } from '#say/en/ui.ts';
import { wholeWord } from '../../address.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/field.tsx';
import { Fit } from '../../ui/fit.tsx';
import { TagWords, tagClass, tagStyle } from '../../ui/tag.tsx';
import { changed, type BoardPlace, type BoardWords } from './place.ts';

interface OtherBagsProps {
  readonly detail: LineDetail;
  readonly place: BoardPlace;
  /** they were just asked for: a number may be typed at once */
  readonly focus: boolean;
}

/** The other bags that may answer a line; the tag of one puts it beside the line. */
export function OtherBags({ detail, place, focus }: OtherBagsProps) {
  const others = detail.others.filter(({ bag }) => bag !== detail.bag || place.bag !== null);
  return (
    <section>
      <h3>{BOARD_LINE.others}</h3>
      {others.length === 0 ? (
        <p className="s two">{BOARD_LINE.noOthers}</p>
      ) : (
        <table className="ledger tight others">
          <caption className="vh">{BOARD_LINE.othersCaption(detail.row)}</caption>
          <thead>
            <tr>
              <th scope="col">{BOARD_PAGE.columns.bag}</th>
              <th scope="col">{BOARD_LINE.holds}</th>
              <th scope="col" className="n">
                {BOARD_LINE.free}
              </th>
            </tr>
          </thead>
          <tbody>
            {others.map((other) => (
              <OtherRow key={other.bag} other={other} beside={other.bag === place.bag} />
            ))}
          </tbody>
        </table>
      )}
      <ByNumber place={place} focus={focus} />
    </section>
  );
}

function OtherRow({ other, beside }: { readonly other: LineDetail['others'][number]; readonly beside: boolean }) {
  const { bag, said, verdict, because, free, chosen } = other;
  return (
    <tr className={beside ? 'on' : undefined} aria-current={beside ? 'true' : undefined}>
      <td className="t">
        <Link
          from="/boards/$board"
          to="/boards/$board"
          params={true}
          search={(now: BoardWords) => changed(now, { bag: String(bag) })}
          replace
          resetScroll={false}
          preload={false}
          className={tagClass({ bag })}
          style={tagStyle(bag)}
        >
          <TagWords bag={bag} />
        </Link>
      </td>
      <td className="long">
        <b>{said.name}</b> <span className="two">{said.rest}</span>
        <br />
        <Fit fit={verdict}>{chosen ? BOARD_LINE.chosen : BOARD_PAGE.verdicts[verdict]}</Fit>{' '}
        <span className="why">{sayFirstReasons(because)}</span>
      </td>
      <td className="n">{figures(free)}</td>
    </tr>
  );
}

const toField = (field: HTMLInputElement | null): void => field?.focus();

/** Any bag at all, by its number. */
function ByNumber({ place, focus }: Pick<OtherBagsProps, 'place' | 'focus'>) {
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const look = (event: FormEvent): void => {
    event.preventDefault();
    const bag = wholeWord(text.trim());
    if (bag === null) setWrong(BOARD_LINE.noSuchNumber(text.trim()));
    else {
      setWrong(null);
      place.go({ bag: String(bag) }, 'replace');
    }
  };
  return (
    <form className="bynumber" onSubmit={look}>
      <Field
        label={BOARD_LINE.byNumber}
        help={BOARD_LINE.byNumberHelp}
        wrong={wrong}
        value={text}
        inputMode="numeric"
        ref={focus ? toField : undefined}
        onKeyDown={(event) => {
          if (event.key === 'Escape') place.go({ show: null, bag: null }, 'replace');
        }}
        onChange={(event) => setText(event.target.value)}
      />
      <Button submit>{BOARD_LINE.look}</Button>
    </form>
  );
}
