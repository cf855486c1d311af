import { KIT, sayPromised } from '#say/en/kit-page.ts';
import { Button } from '../../ui/button.tsx';
import { Note } from '../../ui/note.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import type { KitActs } from './kit-acts.ts';

/** What was just done, what is to know of it, and the way back; or why it was not done, and the way on. */
export function KitLatest({ acts, quiet = false }: { readonly acts: KitActs; readonly quiet?: boolean }) {
  const { latest } = acts;
  return (
    <div className="latest" aria-live="polite">
      <KitTrouble acts={acts} />
      {latest && !acts.trouble && !(quiet && latest.warnings.length === 0) && (
        <Note
          kind={latest.warnings.length > 0 ? 'check' : 'go'}
          title={latest.says}
          actions={
            !latest.undone && (
              <Button disabled={acts.busy} onClick={() => void acts.undo(latest.act, KIT.undone)}>
                {KIT.undo}
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

/** A refusal that has a way on shows it; a lab that is away is asked again with the very same act. */
export function KitTrouble({ acts }: { readonly acts: KitActs }) {
  const { trouble } = acts;
  if (!trouble) return null;
  if (trouble.kind === 'refused' && trouble.problem.code === 'not-enough')
    return (
      <Note
        kind="check"
        title={trouble.problem.detail}
        actions={
          <Button disabled={acts.busy} onClick={() => void acts.inHand()}>
            {KIT.inHand}
          </Button>
        }
      >
        {KIT.inHandWhy}
      </Note>
    );
  if (trouble.kind === 'refused' && trouble.problem.code === 'nothing-made')
    return (
      <Note
        kind="check"
        title={trouble.problem.detail}
        actions={
          <Button disabled={acts.busy} onClick={() => void acts.reserve(sayPromised(), true)}>
            {KIT.reserveAnyway}
          </Button>
        }
      />
    );
  return <TroubleNote trouble={trouble} again={() => void acts.again()} />;
}
