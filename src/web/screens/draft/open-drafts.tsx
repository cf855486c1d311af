import { useMutation, useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { DraftList } from '#api/drafts.ts';
import { DRAFT, sayOpenDraft } from '#say/en/draft-page.ts';
import { sayMoment } from '#say/en/when.ts';
import { queries } from '../../lab/answers.ts';
import { ask, troubleOf } from '../../lab/ask.ts';
import { Button } from '../../ui/button.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { useNow } from '../../ui/now.ts';

const PATH = '/api/drafts';
const KEY = ['lab', PATH];

/** Files that were brought in and are not kept yet, with what was told of them; nothing where there is none. */
export function OpenDrafts({ is }: { readonly is: DraftList['drafts'][number]['is'] }) {
  // a draft is no change of the lab, so that nobody says when there is another
  const { data } = useQuery({
    queryKey: KEY,
    queryFn: ({ signal }) => ask<DraftList>(PATH, { signal }),
    refetchOnMount: 'always',
  });
  const { mutate, isPending, variables, error } = useMutation({
    mutationFn: (draft: string) => ask(`${PATH}/${draft}`, { method: 'DELETE' }),
    onSettled: () => queries.invalidateQueries({ queryKey: KEY }),
  });
  const now = useNow();
  const open = (data?.drafts ?? []).filter((draft) => draft.is === is);
  if (open.length === 0) return null;
  return (
    <section className="opendrafts">
      <h2>{DRAFT.openTitle}</h2>
      <TroubleNote trouble={troubleOf(error)} again={variables === undefined ? undefined : () => mutate(variables)} />
      <ul>
        {open.map(({ draft, name, when, rows }) => (
          <li key={draft}>
            <Link to="/drafts/$draft" params={{ draft }}>
              {name}
            </Link>{' '}
            <span className="s two">{sayOpenDraft(rows, sayMoment(when, now))}</span>{' '}
            <Button
              look="quiet"
              aria-label={DRAFT.openDropNamed(name)}
              aria-disabled={isPending}
              onClick={() => !isPending && mutate(draft)}
            >
              {DRAFT.openDrop}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
