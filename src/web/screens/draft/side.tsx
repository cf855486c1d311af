import { useId, useState } from 'react';
import type { DraftChange, DraftView } from '#api/drafts.ts';
import { DRAFT } from '#say/en/draft-page.ts';
import { figures } from '#say/en/ui.ts';
import { useBoards, useBoxes } from '../../lab/answers.ts';
import { Field } from '../../ui/field.tsx';
import { numbersOf } from './draft.ts';

interface SideProps {
  readonly draft: DraftView;
  readonly tell: (change: DraftChange) => Promise<boolean>;
}

/** What becomes of the file: bags in a box, or a revision of a board. */
export function Side({ draft, tell }: SideProps) {
  return (
    <aside className="drawer flush" aria-label={draft.is === 'list' ? DRAFT.where : DRAFT.whichBoard}>
      {draft.is === 'list' ? <ListSide draft={draft} tell={tell} /> : <BomSide draft={draft} tell={tell} />}
    </aside>
  );
}

function ListSide({ draft, tell }: SideProps) {
  const boxes = useBoxes();
  return (
    <>
      <section>
        <h2>{DRAFT.where}</h2>
        <Settled
          label={DRAFT.boxField}
          help={DRAFT.boxHelp}
          value={draft.box ?? ''}
          known={boxes.value?.boxes.map(({ name }) => name) ?? []}
          onSettle={(text) => tell({ box: text || null })}
        />
      </section>
      <hr />
      <section>
        <h2>{DRAFT.makes}</h2>
        <dl className="facts">
          <dt>{DRAFT.bags}</dt>
          <dd className="sum">{figures(draft.bags)}</dd>
          <dt>{DRAFT.numbers}</dt>
          <dd>{numbersOf(draft.numbers)}</dd>
          <dt>{DRAFT.onHand}</dt>
          <dd>{figures(draft.pieces)}</dd>
          <dt>{DRAFT.open}</dt>
          <dd>{figures(draft.doubts)}</dd>
        </dl>
        {draft.doubts > 0 && <p className="s two">{DRAFT.openMayStay}</p>}
      </section>
    </>
  );
}

function BomSide({ draft, tell }: SideProps) {
  const boards = useBoards();
  return (
    <section>
      <h2>{DRAFT.whichBoard}</h2>
      <Settled
        label={DRAFT.board}
        help={draft.known ? DRAFT.boardKnown : DRAFT.boardNew}
        value={draft.board ?? ''}
        known={boards.value?.boards.map(({ name }) => name) ?? []}
        missing={DRAFT.boardMissing}
        onSettle={(text) => tell({ board: text })}
      />
      <Settled
        label={DRAFT.revision}
        help={DRAFT.revisionHelp}
        value={draft.revision ?? ''}
        known={[]}
        onSettle={(text) => tell({ revision: text || null })}
      />
      {draft.doubts > 0 && <p className="s two">{DRAFT.openMayStayBom}</p>}
    </section>
  );
}

interface SettledProps {
  readonly label: string;
  readonly help: string;
  readonly value: string;
  /** names that are there already, offered while one types */
  readonly known: readonly string[];
  /** what to say where it is left empty and may not be */
  readonly missing?: string;
  readonly onSettle: (text: string) => Promise<boolean>;
}

/** A field that is told when it is left, or on Enter; what is typed stays until the draft holds it. */
function Settled({ label, help, value, known, missing, onSettle }: SettledProps) {
  const list = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const text = typed ?? value;
  const empty = missing !== undefined && text.trim() === '';
  const settle = async (): Promise<void> => {
    if (typed === null || empty) return;
    if (typed.trim() === value || (await onSettle(typed.trim()))) setTyped(null);
  };
  return (
    <>
      <Field
        label={label}
        help={help}
        wrong={empty ? missing : null}
        value={text}
        maxLength={100}
        list={known.length > 0 ? list : undefined}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={() => void settle()}
        onKeyDown={(event) => event.key === 'Enter' && void settle()}
      />
      {known.length > 0 && (
        <datalist id={list}>
          {known.map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
      )}
    </>
  );
}
