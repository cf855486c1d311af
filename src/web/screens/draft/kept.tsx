import { Link } from '@tanstack/react-router';
import type { Warned } from '#api/acts.ts';
import type { BoardSaved } from '#api/boards.ts';
import type { Imported } from '#api/files.ts';
import type { Undone } from '#api/movements.ts';
import { DRAFT, sayMade } from '#say/en/draft-page.ts';
import { useAct } from '../../lab/act.ts';
import { TABLES } from '../../lab/bring-file.ts';
import { useBring } from '../../lab/bring.ts';
import { Answer } from '../../ui/answer.tsx';
import { Button } from '../../ui/button.tsx';
import { Note } from '../../ui/note.tsx';
import { MadeBags } from './made-bags.tsx';
import { PickFile } from '../../ui/pick-file.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';

/** What a kept file became. */
export type Kept = Imported | BoardSaved;

interface KeptProps {
  readonly made: Imported;
}

/** The bags that were made, the ways on, and the way back. */
export function KeptView({ made }: KeptProps) {
  const undo = useAct<{ readonly act: string }, Undone>('/api/undo');
  const list = useBring('list');
  if (undo.done)
    return (
      <main id="main" className="page draft">
        <Answer title={DRAFT.takenBack(made.bags)} why={DRAFT.takenBackWhy}>
          <PickFile accept={TABLES} onFile={list.bring} busy={list.reading !== null}>
            {DRAFT.bring}
          </PickFile>
        </Answer>
        <TroubleNote trouble={list.trouble} again={list.again} />
      </main>
    );
  return (
    <main id="main" className="page draft">
      <Answer title={sayMade(made)} why={DRAFT.keptWhy}>
        <Link className="btn main" to="/">
          {DRAFT.find}
        </Link>
        <Link className="btn" to="/boxes">
          {DRAFT.boxes}
        </Link>
        <Button aria-disabled={undo.busy} onClick={() => !undo.busy && void undo.run({ act: made.id })}>
          {DRAFT.takeBack}
        </Button>
      </Answer>
      <TroubleNote trouble={undo.trouble} again={() => void undo.again()} />
      <Warnings warnings={made.warnings} />
      <MadeBags made={made} />
    </main>
  );
}

function Warnings({ warnings }: { readonly warnings: readonly Warned[] }) {
  return warnings.map(({ text }) => <Note key={text} kind="check" title={text} />);
}
