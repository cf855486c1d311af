import { useMutation } from '@tanstack/react-query';
import { useRef } from 'react';
import { UI } from '#say/en/ui.ts';
import { ask, troubleOf, Unanswered, type Method, type Trouble } from './ask.ts';
import { Unanswereds } from './unanswered.ts';

export interface Act<Body extends object, Answer> {
  /** does it; the answer, or null where there was none (then `trouble` says why, and what was typed stays) */
  readonly run: (body: Body) => Promise<Answer | null>;
  /** the very same act again: harmless where it had arrived after all */
  readonly again: () => Promise<Answer | null>;
  readonly forget: () => void;
  readonly busy: boolean;
  readonly trouble: Trouble | null;
  readonly done: Answer | undefined;
}

interface Told<Body> {
  readonly path: string;
  readonly body: Body & { readonly id: string };
}

/** An id of an act; `crypto.randomUUID` is missing where a page came over plain http. */
export function newActId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}

const unanswereds = new Unanswereds();

/** Sends an act and remembers it until it has its answer; a refusal is one too. */
async function sent<Answer>(method: Method, { path, body }: Told<object>): Promise<Answer> {
  const waited = unanswereds.waits(path, body);
  try {
    const answer = await ask<Answer>(path, { method, body });
    unanswereds.answered(path, body);
    return answer;
  } catch (error) {
    if (!(error instanceof Unanswered)) throw error;
    if (error.trouble.kind === 'away') unanswereds.lost(path, { id: body.id, body });
    else unanswereds.answered(path, body);
    throw waited ? arrivedAfterAll(error) : error;
  }
}

/** The lab knows the id with another body: what was sent first had arrived, and the change of mind is not booked on top of it. */
function arrivedAfterAll(error: Unanswered): Unanswered {
  const { trouble } = error;
  if (trouble.kind === 'away' || trouble.problem.code !== 'id-reused') return error;
  return new Unanswered({ kind: 'refused', problem: { ...trouble.problem, detail: UI.firstBooked } });
}

/** What a person does: one act with an id of its own, which a second press keeps while there is no answer. */
export function useAct<Body extends object, Answer>(path: string, method: Method = 'POST'): Act<Body, Answer> {
  const last = useRef<Told<Body> | null>(null);
  const { mutateAsync, isPending, error, data, reset } = useMutation({
    mutationFn: (told: Told<Body>) => sent<Answer>(method, told),
  });
  const send = async (told: Told<Body>): Promise<Answer | null> => {
    last.current = told;
    try {
      return await mutateAsync(told);
    } catch (thrown) {
      if (thrown instanceof Unanswered) return null;
      throw thrown;
    }
  };
  return {
    run: (body) => {
      const next = unanswereds.next(path, body, newActId);
      return send({ path, body: { ...(next.body as Body), id: next.id } }); // as: this body, or the one that was sent before for it
    },
    again: () => (last.current ? send(last.current) : Promise.resolve(null)),
    forget: reset,
    busy: isPending,
    trouble: troubleOf(error),
    done: data,
  };
}
