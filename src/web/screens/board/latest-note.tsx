import { BOARD_LINE } from '#say/en/board-line.ts';
import { Button } from '../../ui/button.tsx';
import { Note } from '../../ui/note.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import type { BoardActs } from './board-acts.ts';

/** What was just done, what is to know of it, and the way back; or why it was not done. */
export function LatestNote({ acts }: { readonly acts: BoardActs }) {
  const { latest, trouble } = acts;
  return (
    <div className="latest" aria-live="polite">
      <TroubleNote trouble={trouble} again={acts.again} />
      {latest && (
        <Note
          kind={latest.warnings.length > 0 && !latest.undone ? 'check' : 'go'}
          title={latest.undone ? BOARD_LINE.undone : latest.says}
          actions={
            !latest.undone && (
              <Button disabled={acts.busy} onClick={() => void acts.undo()}>
                {BOARD_LINE.undo}
              </Button>
            )
          }
        >
          {latest.warnings.map(({ text }) => text).join(' ')}
        </Note>
      )}
    </div>
  );
}
