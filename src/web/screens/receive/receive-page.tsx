import { useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { RECEIVE, sayReceive, sayTookIn } from '#say/en/receive-page.ts';
import { UI } from '#say/en/ui.ts';
import { useBags, useBoxes } from '../../lab/answers.ts';
import { TABLES } from '../../lab/bring-file.ts';
import { useBring } from '../../lab/bring.ts';
import { Answer } from '../../ui/answer.tsx';
import { DropFile } from '../../ui/drop-file.tsx';
import { Note } from '../../ui/note.tsx';
import { usePageDrop } from '../../ui/page-drop.ts';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { OpenDrafts } from '../draft/open-drafts.tsx';
import { AheadView } from './ahead.tsx';
import { nextFree } from './receive.ts';
import { TakeForm } from './take-form.tsx';
import { TakenList } from './taken-list.tsx';
import { useTaking, type Asking } from './use-taking.ts';
import './receive.css';

/** Takes bags in one by one, a box in the hand; or brings a list of many. */
export function ReceivePage() {
  const search = useSearch({ from: '/receive' });
  const navigate = useNavigate({ from: '/receive' });
  const bags = useBags();
  const boxes = useBoxes();
  const taking = useTaking();
  const bring = useBring('list');
  usePageDrop(bring.bring);
  const [last, setLast] = useState<number | null>(null);
  const [ahead, setAhead] = useState<number | null>(null);
  const [asked, setAsked] = useState<Asking | null>(null);
  const [round, setRound] = useState(0);
  const box = search.box ?? '';
  const next = bags.value ? nextFree(bags.value.bags, last) : null;
  const onTake = async (asking: Asking): Promise<boolean> => {
    setAsked(asking);
    const bag = await taking.book(asking);
    if (bag !== null) setLast(bag);
    return bag !== null;
  };
  const again = async (): Promise<void> => {
    const bag = asked && (await taking.bookAgain(asked));
    if (bag === null) return;
    setLast(bag);
    setAhead(null);
    setRound(round + 1);
  };
  const here = taking.list.filter(({ back, added }) => !back && !added).length;
  return (
    <main id="main" className="page receive" aria-busy={taking.take.busy}>
      <div className="split">
        <div>
          <Answer title={sayReceive(taking.newest, next, box)} why={next === null ? UI.reading : sayTookIn(here, next)} />
          <div className="stack notes">
            <TroubleNote trouble={bags.trouble} />
            <TroubleNote trouble={taking.take.trouble} again={() => void again()} />
            <TroubleNote trouble={taking.add.trouble} />
            <TroubleNote trouble={taking.undo.trouble} again={() => void taking.takeBackAgain()} />
            <TroubleNote trouble={bring.trouble} again={bring.again} />
            {taking.take.done?.warnings.map(({ text }) => (
              <Note key={text} kind="check" title={text} />
            ))}
          </div>
          {next !== null && (
            <TakeForm
              key={round}
              bags={bags.value?.bags ?? []}
              boxes={boxes.value}
              next={next}
              box={box}
              onBox={(wanted) => void navigate({ search: wanted ? { box: wanted } : {}, replace: true, resetScroll: false })}
              begin={round === 0 ? { says: search.says ?? '', bag: search.bag ?? null } : { says: '', bag: null }}
              onNumber={setAhead}
              busy={taking.take.busy || taking.add.busy}
              onTake={onTake}
              onAdd={taking.addTo}
            />
          )}
          <section className="col tookin">
            <h2>{RECEIVE.tookIn}</h2>
            <TakenList list={taking.list} busy={taking.undo.busy} onBack={(act) => void taking.takeBack(act)} />
          </section>
          <p className="keys">
            <span>
              <kbd>Enter</kbd> {RECEIVE.keys.book}
            </span>
          </p>
        </div>
        <aside className="drawer flush" aria-label={RECEIVE.drawer}>
          {next !== null && <AheadView bag={ahead ?? next} box={box.trim()} boxes={boxes.value} />}
          <hr />
          <section>
            <h2>{RECEIVE.list}</h2>
            <p className="s two">{RECEIVE.listWhy}</p>
            <DropFile
              label={RECEIVE.list}
              lead={RECEIVE.listDrop}
              choose={RECEIVE.listChoose}
              accept={TABLES}
              onFile={bring.bring}
              busy={bring.reading !== null}
            />
            <OpenDrafts is="list" />
          </section>
        </aside>
      </div>
    </main>
  );
}
