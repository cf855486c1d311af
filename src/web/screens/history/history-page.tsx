import { useNavigate, useSearch } from '@tanstack/react-router';
import { HISTORY_PAGE, sayChanged, sayHistory, sayMoreBags, sayTookBack, sayUndoOf } from '#say/en/history-page.ts';
import { sayMoment } from '#say/en/when.ts';
import { wholeWord } from '../../address.ts';
import { useAct } from '../../lab/act.ts';
import { useActs } from '../../lab/answers.ts';
import { Answer } from '../../ui/answer.tsx';
import { BagLink } from '../../ui/bag-link.tsx';
import { Button } from '../../ui/button.tsx';
import { Fit } from '../../ui/fit.tsx';
import { Note } from '../../ui/note.tsx';
import { useNow } from '../../ui/now.ts';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { deedsOf, type Deed } from './history.ts';
import './history.css';

const PAGE = 50;

/** What was done in the lab, the newest first; each deed can be taken back once. */
export function HistoryPage() {
  const navigate = useNavigate();
  const { shown: word } = useSearch({ from: '/history' });
  const shown = wholeWord(word, PAGE, 1000) ?? PAGE;
  const { value, waiting, trouble } = useActs(shown);
  const undo = useAct<{ readonly act: string }, { readonly kind: string; readonly undoes: string }>('/api/undo');
  const acts = value?.acts ?? [];
  const now = useNow();
  return (
    <main id="main" className="page history">
      {waiting ? (
        <Answer title={HISTORY_PAGE.reading} />
      ) : acts.length === 0 && !trouble ? (
        <Answer title={HISTORY_PAGE.empty} why={HISTORY_PAGE.emptyWhy} />
      ) : (
        <Answer title={sayHistory(acts.length, acts.length < shown)} why={HISTORY_PAGE.why} />
      )}
      <TroubleNote trouble={trouble} />
      <TroubleNote trouble={undo.trouble} again={() => void undo.again()} />
      {undo.done && !undo.busy && (
        <Note
          kind="go"
          title={sayTookBack(deedsOf(acts).find(({ act }) => act.act === undo.done?.undoes)?.name ?? undo.done.kind)}
        />
      )}
      {acts.length > 0 && (
        <div className="col">
          <table className="ledger fold">
            <caption className="vh">{HISTORY_PAGE.page}</caption>
            <thead>
              <tr>
                <th scope="col">{HISTORY_PAGE.columns.when}</th>
                <th scope="col">{HISTORY_PAGE.columns.what}</th>
                <th scope="col">{HISTORY_PAGE.columns.bags}</th>
                <th scope="col">{HISTORY_PAGE.columns.note}</th>
                <th scope="col">{HISTORY_PAGE.columns.who}</th>
                <th scope="col" className="n">
                  <span className="vh">{HISTORY_PAGE.columns.undo}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {deedsOf(acts).map((deed) => (
                <DeedRow
                  key={deed.act.act}
                  deed={deed}
                  now={now}
                  busy={undo.busy}
                  onUndo={() => void undo.run({ act: deed.act.act })}
                />
              ))}
            </tbody>
          </table>
          {acts.length === shown && shown < 1000 && (
            <p className="older">
              <Button
                onClick={() =>
                  void navigate({ to: '/history', search: { shown: String(shown + PAGE) }, replace: true, resetScroll: false })
                }
              >
                {HISTORY_PAGE.older}
              </Button>
            </p>
          )}
        </div>
      )}
    </main>
  );
}

interface DeedRowProps {
  readonly deed: Deed;
  readonly now: Date;
  readonly busy: boolean;
  readonly onUndo: () => void;
}

function DeedRow({ deed, now, busy, onUndo }: DeedRowProps) {
  const { act, name, state, moreBags } = deed;
  return (
    <tr className={state === 'taken-back' ? 'off' : undefined}>
      <td className="two when" data-as="folded">
        <time dateTime={act.happenedAt}>{sayMoment(act.happenedAt, now)}</time>
      </td>
      <td className="main" data-as="main">
        {state === 'undo' ? sayUndoOf(name) : name}
        {act.pieces !== 0 && <span className="why"> {sayChanged(act.pieces)}</span>}
      </td>
      <td data-as="sub">
        <span className="line">
          {act.bags.map((bag) => (
            <BagLink key={bag} bag={bag} size="sm" />
          ))}
          {moreBags > 0 && <span className="three s">{sayMoreBags(moreBags)}</span>}
        </span>
      </td>
      <td className="two said" data-as="sub">
        {[act.for, act.note].filter(Boolean).join(', ')}
      </td>
      <td className="two" data-as="sub">
        {act.who}
      </td>
      <td className="n" data-as="n">
        {state === 'done' && (
          <Button
            look="quiet"
            disabled={busy}
            onClick={onUndo}
            aria-label={`${HISTORY_PAGE.takeBack}: ${name}, ${sayMoment(act.happenedAt, now)}`}
          >
            {HISTORY_PAGE.takeBack}
          </Button>
        )}
        {state === 'taken-back' && <Fit fit="none">{HISTORY_PAGE.takenBack}</Fit>}
      </td>
    </tr>
  );
}
