import { UI } from '#say/en/ui.ts';
import type { Trouble } from '../lab/ask.ts';
import { Button } from './button.tsx';
import { Note } from './note.tsx';

/** Why an act or an answer did not come, and the way on; what was typed stays where it is. */
export function TroubleNote({ trouble, again }: { readonly trouble: Trouble | null; readonly again?: (() => void) | undefined }) {
  if (!trouble) return null;
  const actions = again && <Button onClick={again}>{UI.tryAgain}</Button>;
  if (trouble.kind === 'away')
    return (
      <Note kind="stop" title={UI.away} actions={actions}>
        {UI.awayKept}
      </Note>
    );
  return <Note kind="stop" title={trouble.problem.detail} />;
}
