import { useMutation } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { newActId } from './act.ts';
import { bringFile } from './bring-file.ts';
import { troubleOf, type Trouble } from './ask.ts';

export interface Bringing {
  readonly bring: (file: File) => void;
  readonly again: (() => void) | undefined;
  /** name of the file that is being read */
  readonly reading: string | null;
  readonly trouble: Trouble | null;
}

interface Brought {
  readonly id: string;
  readonly file: File;
}

/** Brings a file in and opens its draft, one at a time; a second try keeps the id of the first. */
export function useBring(is: 'list' | 'bom'): Bringing {
  const navigate = useNavigate();
  const { mutate, isPending, variables, error } = useMutation({
    mutationFn: ({ id, file }: Brought) => bringFile(file, is, id),
    // waited for: until its page stands, another file is not read
    onSuccess: ({ draft }) => navigate({ to: '/drafts/$draft', params: { draft } }),
  });
  return {
    bring: (file) => !isPending && mutate({ id: newActId(), file }),
    again: variables && (() => !isPending && mutate(variables)),
    reading: isPending ? variables.file.name : null,
    trouble: troubleOf(error),
  };
}
