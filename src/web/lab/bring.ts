import { useMutation } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { bringFile } from './bring-file.ts';
import { Unanswered, type Trouble } from './ask.ts';

interface Bringing {
  readonly bring: (file: File) => void;
  readonly again: (() => void) | undefined;
  /** name of the file that is being read */
  readonly reading: string | null;
  readonly trouble: Trouble | null;
}

/** Brings a file in and opens its draft. */
export function useBring(is: 'list' | 'bom'): Bringing {
  const navigate = useNavigate();
  const { mutate, isPending, variables, error } = useMutation({
    mutationFn: (file: File) => bringFile(file, is),
    onSuccess: (draft) => void navigate({ to: '/drafts/$draft', params: { draft: draft.draft } }),
  });
  return {
    bring: (file) => !isPending && mutate(file),
    again: variables && (() => mutate(variables)),
    reading: isPending ? variables.name : null,
    trouble: error instanceof Unanswered ? error.trouble : error ? { kind: 'away' } : null,
  };
}
