import { useMutation } from '@tanstack/react-query';
import type { Begun } from '#api/lab.ts';
import { newActId } from '../../lab/act.ts';
import { address, ask, troubleOf, type Trouble } from '../../lab/ask.ts';

interface Told {
  readonly id: string;
  readonly file: File;
}

interface Restoring {
  readonly restore: (file: File) => void;
  readonly again: (() => void) | undefined;
  /** name of the backup that is being brought back */
  readonly file: string | null;
  readonly trouble: Trouble | null;
}

/** Brings a lab back from its backup; a second try keeps the id of the first. */
export function useRestore(onDone: () => void): Restoring {
  const { mutate, isPending, variables, error } = useMutation({
    mutationFn: ({ id, file }: Told) => ask<Begun>(address('/api/lab/restore', { id }), { method: 'POST', body: file }),
    onSuccess: onDone,
  });
  return {
    restore: (file) => !isPending && mutate({ id: newActId(), file }),
    again: variables && (() => mutate(variables)),
    file: isPending ? variables.file.name : null,
    trouble: troubleOf(error),
  };
}
