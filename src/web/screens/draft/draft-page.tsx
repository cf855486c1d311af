import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import type { DraftView } from '#api/drafts.ts';
import { DRAFT, sayFile, sayKeep, sayKeptBoard, sayRead } from '#say/en/draft-page.ts';
import { wholeWord } from '../../address.ts';
import { useDraft } from '../../lab/answers.ts';
import { TABLES } from '../../lab/bring-file.ts';
import { useBring } from '../../lab/bring.ts';
import { Answer } from '../../ui/answer.tsx';
import { Button } from '../../ui/button.tsx';
import { useKeys } from '../../ui/keys.ts';
import { Named } from '../../ui/named.tsx';
import { Note } from '../../ui/note.tsx';
import { usePageDrop } from '../../ui/page-drop.ts';
import { PickFile } from '../../ui/pick-file.tsx';
import type { Trouble } from '../../lab/ask.ts';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { Columns } from './columns.tsx';
import { afterAnswer, afterOut, asTold, besideRow, fieldToSay, groupOf, linesOf, nextDoubt, refusalAt } from './draft.ts';
import { KeptView } from './kept.tsx';
import { Rows } from './rows.tsx';
import { Side } from './side.tsx';
import { useTelling, type Told } from './use-draft.ts';
import { useKeeping, type Keeping } from './use-keeping.ts';
import './draft.css';

/** A file read back: what each column holds, what each line was read as, and what is not sure. */
export function DraftPage() {
  const { draft } = useParams({ from: '/drafts/$draft' });
  return <Draft key={draft} draft={draft} />;
}

function Draft({ draft }: { readonly draft: string }) {
  const asked = useDraft(draft);
  const told = useTelling(draft);
  const keep = useKeeping(draft, told);
  if (keep.done && 'bags' in keep.done) return <KeptView made={keep.done} />;
  if (keep.done)
    return (
      <main id="main" className="page draft">
        <Answer title={<Named says={sayKeptBoard(keep.done.board, keep.done.revision)} name={keep.done.board} />} />
      </main>
    );
  // a draft that is kept is gone; what was read of it before is not shown as if it were there
  const gone = asked.trouble?.kind === 'refused' && !keep.busy && keep.trouble?.kind !== 'away';
  if (!asked.value || gone) return <NoDraft trouble={asked.trouble} />;
  return <DraftRead draft={asked.value} told={told} keep={keep} />;
}

const isKept = (trouble: Trouble): boolean => trouble.kind === 'refused' && trouble.problem.code === 'draft-kept';

function NoDraft({ trouble }: { readonly trouble: ReturnType<typeof useDraft>['trouble'] }) {
  const list = useBring('list');
  if (!trouble)
    return (
      <main id="main" className="page draft">
        <Answer title={DRAFT.reading0} />
      </main>
    );
  return (
    <main id="main" className="page draft">
      <Answer
        title={isKept(trouble) ? DRAFT.wasKept : DRAFT.gone}
        why={trouble.kind === 'refused' ? trouble.problem.detail : DRAFT.goneWhy}
      >
        <PickFile accept={TABLES} onFile={list.bring} busy={list.reading !== null}>
          {DRAFT.bring}
        </PickFile>
      </Answer>
      <TroubleNote trouble={list.trouble ?? (trouble.kind === 'away' ? trouble : null)} again={list.again} />
    </main>
  );
}

interface ReadProps {
  readonly draft: DraftView;
  readonly told: Told;
  readonly keep: Keeping;
}

function DraftRead({ draft: kept, told, keep }: ReadProps) {
  const search = useSearch({ from: '/drafts/$draft' });
  const navigate = useNavigate({ from: '/drafts/$draft' });
  const another = useBring(kept.is);
  usePageDrop(another.bring);
  const [saying, setSaying] = useState<{ readonly row: number; readonly field: string } | null>(null);
  const draft: DraftView = { ...kept, rows: asTold(kept.rows, told.held, saying) };
  const on = wholeWord(search.row);
  const show = wholeWord(search.show);
  const go = (row: number | null, rows: number | null): void => {
    const words = { ...(row !== null && { row: String(row) }), ...(rows !== null && { show: String(rows) }) };
    void navigate({ search: words, replace: true, resetScroll: false });
  };
  const look = (row: number | null): void => go(row, show);
  const answer = async (row: number, field: string, text: string | null): Promise<boolean> => {
    const next = afterAnswer(draft.rows, row);
    const typed = saying?.row === row && saying.field === field;
    if (!typed) look(next);
    const done = await told.tell({ answers: [{ row, field, text }] });
    if (done && typed) {
      setSaying(null);
      look(next);
    }
    return done;
  };
  const leaveOut = (row: number, out: boolean): void => {
    void told.tell({ out: [{ row, out }] });
    look(out ? afterOut(draft.rows, row) : row);
  };
  const stopped = draft.trouble !== null || (draft.is === 'bom' && !draft.board) || told.trouble?.kind === 'away';
  const keepIt = (): void => {
    if (!stopped) keep.keep();
  };
  const chosen = draft.rows.find(({ row }) => row === on);
  const refused = refusalAt(told.trouble, saying);
  useKeys({
    Enter: () => look(nextDoubt(draft.rows, on)),
    'Ctrl+Enter': keepIt,
    ArrowDown: () => look(besideRow(draft.rows, { on, show }, 1)),
    ArrowUp: () => look(besideRow(draft.rows, { on, show }, -1)),
    e: () => chosen && setSaying({ row: chosen.row, field: fieldToSay(chosen) }),
    Delete: () => chosen && leaveOut(chosen.row, !chosen.out),
  });
  const doubted = draft.rows.filter((row) => groupOf(row) === 'doubts').length + draft.moreDoubted;
  return (
    <main id="main" className="page draft" aria-busy={told.busy || keep.busy}>
      <div className="split">
        <div>
          <Answer
            title={<Named says={sayRead({ ...draft, lines: linesOf(draft), doubted })} name={draft.name} />}
            why={<Named says={sayFile(draft.name, draft.bytes, draft.notes, draft.is)} name={draft.name} />}
          >
            <Button look="main" aria-disabled={stopped || keep.busy} onClick={keepIt}>
              {sayKeep(draft.is, draft.bags, draft.board, draft.revision)}
            </Button>
            <PickFile accept={TABLES} onFile={another.bring} busy={another.reading !== null}>
              {DRAFT.another}
            </PickFile>
          </Answer>
          <div className="stack notes">
            {draft.trouble !== null && <Note kind="stop" title={draft.trouble} />}
            <TroubleNote trouble={refused === null ? told.trouble : null} again={() => void told.again()} />
            <TroubleNote trouble={keep.trouble} again={keep.again} />
            <TroubleNote trouble={another.trouble} again={another.again} />
          </div>
          <Columns draft={draft} onRole={(column, role) => void told.tell({ columns: { [column]: role } })} />
          <Rows
            draft={draft}
            on={on}
            saying={saying}
            refused={refused}
            onLook={look}
            onSay={(row, field) => {
              setSaying(field === null ? null : { row, field });
              look(row);
            }}
            show={show}
            onShow={(rows) => go(on, rows)}
            answer={answer}
            forget={(row, field) => void told.tell({ forget: [{ row, field }] }).then((done) => done && look(row))}
            leaveOut={leaveOut}
          />
          <Keys />
        </div>
        <Side draft={draft} tell={told.tell} />
      </div>
    </main>
  );
}

function Keys() {
  const { row, next, say, out, keep } = DRAFT.keys;
  return (
    <p className="keys">
      <span>
        <kbd>↑</kbd> <kbd>↓</kbd> {row}
      </span>
      <span>
        <kbd>Enter</kbd> {next}
      </span>
      <span>
        <kbd>E</kbd> {say}
      </span>
      <span>
        <kbd>Del</kbd> {out}
      </span>
      <span>
        <kbd>Ctrl</kbd> <kbd>Enter</kbd> {keep}
      </span>
    </p>
  );
}
