import { useMutation } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useEffect, useState } from 'react';
import { BOARDS_PAGE } from '#say/en/boards-page.ts';
import { Unanswered, type Trouble } from '../../lab/ask.ts';
import { bringFile, TABLES } from '../../lab/bring-file.ts';
import { Button } from '../../ui/button.tsx';
import { DropFile } from '../../ui/drop-file.tsx';
import { Note } from '../../ui/note.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';

export interface Bringing {
  readonly bring: (file: File) => void;
  readonly again: () => void;
  /** name of the file that is being read */
  readonly name: string | null;
  readonly trouble: Trouble | null;
  /** a file is held over the page */
  readonly over: boolean;
}

/** Has a BOM read and goes to what was read; a file may be dropped anywhere on the page. */
export function useBringing(): Bringing {
  const navigate = useNavigate();
  const { mutate, variables, isPending, error } = useMutation({
    mutationFn: (file: File) => bringFile(file, 'bom'),
    onSuccess: ({ draft }) => navigate({ to: '/drafts/$draft', params: { draft } }),
  });
  const over = usePageDrop(mutate);
  return {
    bring: (file) => mutate(file),
    again: () => variables && mutate(variables),
    name: isPending ? variables.name : null,
    trouble: error instanceof Unanswered ? error.trouble : error ? { kind: 'away' } : null,
    over,
  };
}

function usePageDrop(onFile: (file: File) => void): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const held = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;
    const hold = (event: DragEvent): void => {
      if (!held(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent): void => {
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (event.defaultPrevented || !file) return;
      event.preventDefault();
      onFile(file);
    };
    addEventListener('dragover', hold);
    addEventListener('dragleave', leave);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', hold);
      removeEventListener('dragleave', leave);
      removeEventListener('drop', drop);
    };
  }, [onFile]);
  return over;
}

export function BringBom({ bringing }: { readonly bringing: Bringing }) {
  const { name, over } = bringing;
  return (
    <DropFile
      label={BOARDS_PAGE.bringZone}
      lead={name === null ? (over ? BOARDS_PAGE.dropHere : BOARDS_PAGE.bringLead) : BOARDS_PAGE.bringing(name)}
      choose={BOARDS_PAGE.bring}
      accept={TABLES}
      onFile={bringing.bring}
      main
      busy={name !== null}
    />
  );
}

/** Why a file could not be read, as the lab says it. */
export function BringTrouble({ bringing }: { readonly bringing: Bringing }) {
  const { trouble } = bringing;
  if (trouble?.kind !== 'refused') return <TroubleNote trouble={trouble} again={bringing.again} />;
  return (
    <Note kind="stop" title={trouble.problem.detail} actions={<Button onClick={bringing.again}>{BOARDS_PAGE.again}</Button>} />
  );
}
