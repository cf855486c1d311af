/** An act that was sent and got no answer: it may have been booked, or may never have arrived. */
export interface Sent {
  readonly id: string;
  readonly body: object;
}

/** What a page learns between two presses, and nobody typed: it makes no other act of it. */
const LEARNED: ReadonlySet<string> = new Set(['sawSeq', 'saw']);

/**
 * Keeps the acts of this page that got no answer, by what they are about, so that pressing the button again is the same act again
 * and not a second one: also after the person went to another page and came back.
 */
export class Unanswereds {
  readonly #sent = new Map<string, Sent>();

  /** How to send this: the very same act again, another body under the id that was sent before, or a new act. */
  next(path: string, body: object, newId: () => string): Sent {
    const before = this.#sent.get(about(path, body));
    if (!before) return { id: newId(), body };
    return { id: before.id, body: typed(before.body) === typed(body) ? before.body : body };
  }

  lost(path: string, sent: Sent): void {
    this.#sent.set(about(path, sent.body), sent);
  }

  answered(path: string, body: object): void {
    this.#sent.delete(about(path, body));
  }

  /** Was something sent about this that got no answer? */
  waits(path: string, body: object): boolean {
    return this.#sent.has(about(path, body));
  }
}

/** What an act is about: a pick of bag 23 is not one of bag 40. A new bag is known by what it says, since its number moves on. */
function about(path: string, body: object): string {
  const of = body as Readonly<Record<string, unknown>>; // as: only looked at by name
  const subject = of['says'] ?? of['bag'] ?? of['board'] ?? of['demand'] ?? of['act'] ?? '';
  return `${path} ${JSON.stringify(subject)}`;
}

/** The body as the person typed it. */
function typed(body: object): string {
  const says = 'says' in body;
  return JSON.stringify(body, (key, value: unknown) =>
    LEARNED.has(key) || key === 'id' || (says && key === 'bag') ? undefined : value,
  );
}
