import { randomUUID } from 'node:crypto';
import { startServer, type ServerChild } from './server-child.ts';

/** Random numbers that come again with the same seed (mulberry32, public domain, from memory). */
export function seeded(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * below);
  };
}

interface Post {
  readonly path: '/api/movements' | '/api/undo';
  readonly body: Readonly<Record<string, unknown>> & { readonly id: string };
}

/** What the clients know by the answers that they got. */
export interface Books {
  /** what each acknowledged act changed, by its id */
  readonly acts: Map<string, { readonly bag: number; readonly delta: number }>;
  /** posts that were sent and never answered */
  readonly open: Map<string, Post>;
  readonly undone: Set<string>;
  refused: number;
  kills: number;
  /** posts that were sent again since a kill took their answer */
  resent: number;
}

const CLIENTS = 4;

/** One client: posts acts of its own until the server is gone; what got no answer stays in the books as open. */
async function client(url: string, books: Books, bags: readonly number[], random: (below: number) => number): Promise<void> {
  for (;;) {
    const post = nextPost(books, bags, random);
    books.open.set(post.body.id, post);
    if (!(await send(url, post, books))) return;
  }
}

function nextPost(books: Books, bags: readonly number[], random: (below: number) => number): Post {
  const id = randomUUID();
  const bag = bags[random(bags.length)] ?? 1;
  const what = random(10);
  const undoable = [...books.acts.keys()].filter((act) => !books.undone.has(act)).at(-1 - random(8));
  if (what === 0 && undoable) return { path: '/api/undo', body: { id, act: undoable } };
  const path = '/api/movements';
  if (what === 1) return { path, body: { id, kind: 'counted', bag, counted: 900 + random(200) } };
  if (what < 4) return { path, body: { id, kind: 'received', bag, quantity: 1 + random(50) } };
  if (what < 6) return { path, body: { id, kind: 'returned', bag, quantity: 1 + random(5) } };
  return { path, body: { id, kind: 'picked', bag, quantity: 1 + random(9) } };
}

/** Sends a post and enters its answer; false where none came. */
async function send(url: string, post: Post, books: Books): Promise<boolean> {
  const { id } = post.body;
  const answer = await fetch(url + post.path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(post.body),
  })
    .then(async (response) => ({ status: response.status, body: (await response.json()) as Readonly<Record<string, unknown>> })) // as: every answer of the interface is an object
    .catch(() => null);
  if (!answer) return false;
  books.open.delete(id);
  if (answer.status >= 500) throw new Error(`a fault: ${JSON.stringify(answer.body)}`);
  if (answer.status >= 400) books.refused += 1;
  else enter(books, post, answer.body);
  return true;
}

function enter(books: Books, { path, body }: Post, answer: Readonly<Record<string, unknown>>): void {
  if (path === '/api/movements') {
    books.acts.set(body.id, { bag: Number(answer['bag']), delta: Number(answer['delta']) });
    return;
  }
  const act = String(body['act']);
  const undone = books.acts.get(act);
  if (!undone) throw new Error(`an act was undone that nobody knows: ${act}`);
  books.undone.add(act);
  books.undone.add(body.id);
  books.acts.set(body.id, { bag: undone.bag, delta: -undone.delta });
}

/** Sends again, with the same ids, what got no answer before the server died. */
export async function settle(url: string, books: Books): Promise<void> {
  for (const post of books.open.values()) {
    books.resent += 1;
    if (!(await send(url, post, books))) throw new Error('the server is gone while nobody killed it');
  }
}

/** One round: the server starts, open posts are sent again, `look` looks at it, clients work, the server is killed. */
export async function crashRound(
  home: string,
  books: Books,
  bags: readonly number[],
  random: (below: number) => number,
  look: (server: ServerChild) => Promise<void>,
): Promise<void> {
  const server = await startServer(home);
  await settle(server.url, books);
  await look(server);
  const working = Array.from({ length: CLIENTS }, () => client(server.url, books, bags, random));
  await new Promise((wake) => setTimeout(wake, 10 + random(140)));
  await server.end('SIGKILL');
  books.kills += 1;
  await Promise.all(working);
}
