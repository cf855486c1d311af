import { Navigate } from '@tanstack/react-router';
import { useMemo } from 'react';
import type { FoundAnswer } from '#api/bags.ts';
import type { LabView } from '#api/lab.ts';
import { BAG_DRAWER } from '#say/en/bag-drawer.ts';
import { FIND_PAGE, sayLab, sayLabMore } from '#say/en/find-page.ts';
import { useBoxes, useFound, useLab, useTouched } from '../../lab/answers.ts';
import { Answer } from '../../ui/answer.tsx';
import { useKeys } from '../../ui/keys.ts';
import { isNarrow, useNarrow } from '../../ui/narrow.ts';
import { usePainted } from '../../ui/painted.ts';
import { Note } from '../../ui/note.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { useTypedNumber } from '../../ui/typed-number.ts';
import { AskField } from './ask-field.tsx';
import { BagDrawer } from './bag-drawer.tsx';
import { answerOf, groupsOf, rowsOf, stepFrom } from './find.ts';
import { BagLedger, rowId, whysOf } from './found-ledger.tsx';
import { useFindPlace, type FindPlace } from './place.ts';
import { placesOf, type Places } from './places.ts';
import { Start, WaysToAsk } from './start.tsx';
import { useTypedWords } from './typed-words.ts';
import './find.css';

/** Where is it, and how many: a part, a bag or a box by any notation. */
export function FindPage() {
  const lab = useLab();
  if (lab.value?.empty) return <Navigate to="/begin" replace />;
  return <Find />;
}

function Find() {
  const place = useFindPlace();
  const [text, type] = useTypedWords(place.words, (words) => place.go({ words }, 'replace'));
  const found = useFound(text);
  const boxes = useBoxes();
  const places = useMemo(() => placesOf(boxes.value), [boxes.value]);
  const lab = useLab();
  const touched = useTouched();
  const last = touched.value?.bags ?? [];
  const narrow = useNarrow();
  const asks = text.trim() !== '';
  // what stands below comes when all above it is known, so that nothing moves
  const known = lab.value !== undefined && !touched.waiting;
  const answer = asks ? found.value : undefined;
  const rows = asks ? rowsOf(groupsOf(answer?.found ?? [])) : last.map(({ bag }) => bag);
  const over = narrow && place.bag !== null;
  useFindKeys(place, rows, type);
  const step = (by: 1 | -1): void => toRow(place, stepFrom(rows, place.bag, by));
  return (
    <main id="main" className="page find">
      <div className={place.bag === null ? 'split alone' : 'split'}>
        <div inert={over}>
          <AskField
            text={text}
            onText={type}
            read={answer?.read ?? []}
            focus={place.focus}
            onFocused={() => place.go({}, 'replace')}
            onDown={() => step(1)}
            onEnter={() =>
              rows[0] !== undefined && place.go({ words: text, bag: rows[0] }, place.bag === null ? 'push' : 'replace')
            }
          />
          <TroubleNote trouble={found.trouble ?? boxes.trouble ?? touched.trouble} />
          {asks ? (
            <Found answer={answer} chosen={place.bag} places={places} />
          ) : (
            <>
              <LabAnswer lab={lab.value} />
              {known && <Start last={last} chosen={place.bag} places={places} />}
            </>
          )}
          {(asks || known) && <FindKeyHints open={place.bag !== null} />}
        </div>
        {place.bag !== null && <BagDrawer number={place.bag} place={place} places={places} boxes={boxes.value} over={over} />}
      </div>
    </main>
  );
}

function LabAnswer({ lab }: { readonly lab: LabView | undefined }) {
  if (!lab) return <Answer title={FIND_PAGE.reading} />;
  return <Answer title={sayLab(lab.bags, lab.boxes)} why={sayLabMore(lab.exhausted, lab.toCount)} />;
}

interface FoundProps {
  readonly answer: FoundAnswer | undefined;
  readonly chosen: number | null;
  readonly places: Places;
}

const A_SCREEN = 24;

function Found({ answer, chosen, places }: FoundProps) {
  // of another answer what fits on a screen is painted first, so that typing never waits for the rest
  const painted = usePainted(answer);
  if (!answer) return <Answer title={FIND_PAGE.looking} />;
  const { title, why } = answerOf(answer);
  const found = painted?.words === answer.words ? answer.found : answer.found.slice(0, A_SCREEN);
  const groups = groupsOf(found).map(({ group, bags }) => ({ head: group, bags }));
  return (
    <>
      <Answer title={title} why={why} />
      {groups.length > 0 ? (
        <div className="col">
          <BagLedger caption={FIND_PAGE.caption} groups={groups} chosen={chosen} places={places} why={whysOf(answer.found)} />
        </div>
      ) : (
        <div className="nothing">
          <Note title={`${FIND_PAGE.askOtherwise}.`}>{FIND_PAGE.askOtherwiseWhy}</Note>
          <WaysToAsk />
        </div>
      )}
    </>
  );
}

/** The chosen row: its drawer follows beside the list, the focus shows where it is. */
function toRow(place: FindPlace, bag: number | null): void {
  if (bag === null) return;
  document.getElementById(rowId(bag))?.focus();
  if (!isNarrow()) place.go({ bag }, place.bag === null ? 'push' : 'replace');
}

function useFindKeys(place: FindPlace, rows: readonly number[], type: (text: string) => void): void {
  const figures = useTypedNumber((bag) => bag > 0 && place.go({ bag }, place.bag === null ? 'push' : 'replace'));
  const here = (): number | null => {
    const at = rows.find((bag) => document.activeElement?.id === rowId(bag));
    return at ?? place.bag;
  };
  useKeys({
    ...figures,
    ArrowDown: () => toRow(place, stepFrom(rows, here(), 1)),
    ArrowUp: () => toRow(place, stepFrom(rows, here(), -1)),
    Escape: () => {
      if (place.act) place.go({ act: null }, 'replace');
      else if (place.bag !== null) place.go({ bag: null }, 'replace');
      else type('');
    },
  });
}

function FindKeyHints({ open }: { readonly open: boolean }) {
  const { keys } = FIND_PAGE;
  const bag = BAG_DRAWER.keys;
  const hints: readonly (readonly [readonly string[], string])[] = [
    [['↑', '↓'], keys.row],
    [['Enter'], keys.open],
    ...(open
      ? ([
          [['P'], bag.pick],
          [['T'], bag.back],
          [['C'], bag.count],
          [['U'], bag.undo],
        ] as const)
      : []),
    [['114'], keys.number],
    [['Esc'], keys.clear],
  ];
  return (
    <p className="keys">
      {hints.map(([pressed, does]) => (
        <span key={does}>
          {pressed.map((key) => (
            <span key={key}>
              <kbd>{key}</kbd>{' '}
            </span>
          ))}
          {does}
        </span>
      ))}
    </p>
  );
}
