import type { Problem } from '#api/problem.ts';
import { changes } from './changes.ts';
import { myName } from './my-name.ts';

/** Why there is no answer: the lab refused and said why, or it could not be reached. */
export type Trouble = { readonly kind: 'refused'; readonly problem: Problem } | { readonly kind: 'away' };

/** Thrown by `ask`; the pages show its trouble. */
export class Unanswered extends Error {
  readonly trouble: Trouble;
  constructor(trouble: Trouble) {
    super(trouble.kind === 'refused' ? trouble.problem.detail : 'the lab did not answer');
    this.trouble = trouble;
  }
}

/** What a page says of a failed question or act; a fault of ours is no trouble of the lab, and is thrown on. */
export function troubleOf(error: Error | null): Trouble | null {
  if (error === null) return null;
  if (error instanceof Unanswered) return error.trouble;
  throw error;
}

export type Method = 'GET' | 'POST' | 'PATCH' | 'DELETE';

interface Sent {
  readonly method?: Method;
  /** an object goes as JSON, a file as it is */
  readonly body?: object | Blob;
  readonly signal?: AbortSignal;
}

const CHANGE = 'bagatelle-change';
const LAB = 'bagatelle-lab';

/** The lab that this page shows; an act that was typed for it is refused by another one in its place. */
let shown: string | null = null;

/** Asks the lab's API; what comes back has the shape that `src/api` gives for the address. Throws `Unanswered`. */
export async function ask<Answer>(address: string, sent: Sent = {}): Promise<Answer> {
  const answer = await fetched(address, sent);
  // the first answer says which lab this page is of; only what makes another lab of it may change that
  if (shown === null || (sent.method === 'POST' && address.startsWith('/api/lab/'))) shown = answer.headers.get(LAB) ?? shown;
  const body = await readBody(answer, sent.signal);
  if (!answer.ok) {
    if (isProblem(body)) {
      if (body.code === 'wire-change-ahead') changes.reset();
      throw new Unanswered({ kind: 'refused', problem: body });
    }
    throw new Unanswered({ kind: 'away' });
  }
  // an act must be known to the questions that follow it, and a change after the first answer must be seen as one
  changes.note(Number(answer.headers.get(CHANGE) ?? Number.NaN));
  return body as Answer; // as: the shape is the API's contract, which the server's compiler holds
}

async function readBody(answer: Response, signal?: AbortSignal): Promise<unknown> {
  if (!answer.headers.get('content-type')?.includes('json')) return null;
  try {
    return await answer.json();
  } catch (error) {
    if (signal?.aborted) throw error;
    // it broke off on its way
    throw new Unanswered({ kind: 'away' });
  }
}

async function fetched(address: string, { method = 'GET', body, signal }: Sent): Promise<Response> {
  const file = body instanceof Blob;
  const headers: Record<string, string> = { 'bagatelle-at-least': String(Math.max(0, changes.known())) };
  const who = myName();
  if (who) headers['bagatelle-who'] = encodeURIComponent(who);
  if (method !== 'GET' && shown !== null) headers[LAB] = shown;
  if (method !== 'GET') headers['content-type'] = file ? 'application/octet-stream' : 'application/json';
  const payload = body === undefined ? (method === 'POST' ? '{}' : null) : file ? body : JSON.stringify(body);
  try {
    return await fetch(address, { method, headers, body: payload, ...(signal && { signal }) });
  } catch (error) {
    if (signal?.aborted) throw error;
    throw new Unanswered({ kind: 'away' });
  }
}

function isProblem(body: unknown): body is Problem {
  return typeof body === 'object' && body !== null && 'code' in body && 'detail' in body;
}

/** Address with what is asked after the `?`; what is undefined or null is left out. */
export function address(
  path: string,
  query: Readonly<Record<string, string | number | boolean | null | undefined>> = {},
): string {
  const words = new URLSearchParams();
  for (const [name, value] of Object.entries(query)) if (value !== undefined && value !== null) words.set(name, String(value));
  return words.size ? `${path}?${words}` : path;
}
