import { Link } from '@tanstack/react-router';
import type { Warned } from '#api/acts.ts';
import type { BoardSaved } from '#api/boards.ts';
import type { Imported } from '#api/files.ts';
import type { Undone } from '#api/movements.ts';
import { DRAFT, sayMade } from '#say/en/draft-page.ts';
import { useAct } from '../../lab/act.ts';
import { Answer } from '../../ui/answer.tsx';
import { Button } from '../../ui/button.tsx';
import { Note } from '../../ui/note.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';

/** What a kept file became. */
export type Kept = Imported | BoardSaved;

interface KeptProps {
  readonly made: Imported;
  /** it was taken back: the file stands as it was before */
  readonly onBack: () => void;
}

/** The bags that were made, the ways on, and the way back. */
export function KeptView({ made, onBack }: KeptProps) {
  const undo = useAct<{ readonly act: string }, Undone>('/api/undo');
  const takeBack = async (): Promise<void> => {
    if (await undo.run({ act: made.id })) onBack();
  };
  return (
    <main id="main" className="page draft">
      <Answer title={sayMade(made)} why={DRAFT.keptWhy}>
        <Link className="btn main" to="/">
          {DRAFT.find}
        </Link>
        <Link className="btn" to="/boxes">
          {DRAFT.boxes}
        </Link>
        <Button aria-disabled={undo.busy} onClick={() => !undo.busy && void takeBack()}>
          {DRAFT.takeBack}
        </Button>
      </Answer>
      <TroubleNote trouble={undo.trouble} again={() => void undo.again().then((done) => done && onBack())} />
      <Warnings warnings={made.warnings} />
    </main>
  );
}

function Warnings({ warnings }: { readonly warnings: readonly Warned[] }) {
  return warnings.map(({ text }) => <Note key={text} kind="check" title={text} />);
}
