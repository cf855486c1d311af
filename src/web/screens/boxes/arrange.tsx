import type { BoxesView } from '#api/bags.ts';
import { BOXES_PAGE } from '#say/en/boxes-page.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { Note } from '../../ui/note.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { standingOf } from './boxes.ts';
import type { Arranging } from './use-arranging.ts';

/** Side by side or stacked, and the way back from the latest change. */
export function Arrange({ view, arranging }: { readonly view: BoxesView; readonly arranging: Arranging }) {
  const standing = standingOf(view);
  return (
    <div className="arrange">
      <Choice
        legend={BOXES_PAGE.stands}
        options={[
          { value: 'beside', says: BOXES_PAGE.beside },
          { value: 'stacked', says: BOXES_PAGE.stacked },
        ]}
        value={view.boxes.length > 1 ? standing : 'beside'}
        onChange={arranging.stand}
        help={BOXES_PAGE.lifts}
      />
      <div aria-live="polite">
        <TroubleNote trouble={arranging.trouble} again={arranging.again} />
        {(arranging.undo || arranging.undone) && (
          <Note
            kind="go"
            title={arranging.undone ? BOXES_PAGE.unarranged : BOXES_PAGE.arranged}
            actions={
              arranging.undo && (
                <Button onClick={arranging.undo} disabled={arranging.busy}>
                  {BOXES_PAGE.undo}
                </Button>
              )
            }
          />
        )}
      </div>
      <div className="headed">
        <h2>{standing === 'stacked' ? BOXES_PAGE.stackedHead : BOXES_PAGE.besideHead}</h2>
        <span className="s two">{BOXES_PAGE.front}</span>
      </div>
    </div>
  );
}
