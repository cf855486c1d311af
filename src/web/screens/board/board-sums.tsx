import type { BoardLines } from '#api/boards.ts';
import { BOARD_PAGE, SAY_COUNTS, sayBom } from '#say/en/board-page.ts';
import { useBoards } from '../../lab/answers.ts';
import { Fit } from '../../ui/fit.tsx';
import { Select } from '../../ui/select.tsx';
import { countsOf } from './board.ts';
import { FIT_OF } from './line-row.tsx';
import type { BoardPlace } from './place.ts';

const ORDER = ['exact', 'serves', 'accepted', 'check', 'missing'] as const;

/** How many lines stand how, and which revision this is. */
export function BoardSums({ place, view }: { readonly place: BoardPlace; readonly view: BoardLines }) {
  const counts = countsOf(view.lines);
  const revisions = useBoards().value?.boards.find(({ name }) => name === place.board)?.revisions ?? [];
  const newest = revisions.at(-1)?.name;
  return (
    <div className="sums s">
      <p className="counts">
        {ORDER.filter((standing) => counts[standing] > 0).map((standing) => (
          <Fit key={standing} fit={FIT_OF[standing]}>
            {SAY_COUNTS[standing](counts[standing])}
          </Fit>
        ))}
      </p>
      <div className="from">
        <p className="two">{sayBom(view.revision, view.lines.length, view.source)}</p>
        {revisions.length > 1 && (
          <Select
            label={BOARD_PAGE.revision}
            hideLabel
            value={view.revision}
            options={revisions.toReversed().map(({ name }) => ({ value: name, says: BOARD_PAGE.revisionNamed(name) }))}
            onChange={(revision) =>
              place.go({ revision: revision === newest ? null : revision, row: null, bag: null, show: null })
            }
          />
        )}
      </div>
    </div>
  );
}
