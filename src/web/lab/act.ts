import { useMutation } from '@tanstack/react-query';
import { useRef } from 'react';
import { ask, Unanswered, type Method, type Trouble } from './ask.ts';

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

/** What a person does: one act with an id of its own, which a second try keeps. */
export function useAct<Body extends object, Answer>(path: string, method: Method = 'POST'): Act<Body, Answer> {
  const last = useRef<Told<Body> | null>(null);
  const { mutateAsync, isPending, error, data, reset } = useMutation({
    mutationFn: (told: Told<Body>) => ask<Answer>(told.path, { method, body: told.body }),
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
    run: (body) => send({ path, body: { ...body, id: newActId() } }),
    again: () => (last.current ? send(last.current) : Promise.resolve(null)),
    forget: reset,
    busy: isPending,
    trouble: error instanceof Unanswered ? error.trouble : error ? { kind: 'away' } : null,
    done: data,
  };
}
