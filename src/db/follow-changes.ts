const AGAIN_MS = 1000;

/** All who follow the change number of one lab: they share one ear, and one look answers them all. */
export interface Followers {
  /** it may have changed */
  look(): void;
  /** calls back once with the present number, then with each newer one; answers how to stop */
  watch(onChange: (change: number) => void): () => void;
  close(): void;
}

interface Follower {
  readonly tell: (change: number) => void;
  last: number;
}

/** Turns "it may have changed" into rising numbers: one look at a time, none lost. It listens only while somebody follows. */
export function followChanges(change: () => Promise<number>, listen: (onMaybe: () => void) => () => void): Followers {
  const followers = new Set<Follower>();
  let deafen: (() => void) | null = null;
  let looking = false;
  let again = false;
  let closed = false;
  const run = async (): Promise<void> => {
    looking = true;
    try {
      do {
        again = false;
        const now = await change();
        for (const follower of followers) tellNewer(follower, now);
      } while (again);
    } finally {
      looking = false; // in the same turn as the last question whether to look again: none gets lost between
    }
  };
  const look = (): void => {
    again = true;
    if (looking || closed || followers.size === 0) return;
    run().catch((error: unknown) => {
      // a lab that is closed can't be asked any more, and needs no answer; any other trouble is told, and tried again
      if (closed) return;
      process.emitWarning(error instanceof Error ? error : String(error));
      setTimeout(look, AGAIN_MS).unref();
    });
  };
  return {
    look,
    watch(onChange) {
      const follower = { tell: onChange, last: -1 };
      followers.add(follower);
      deafen ??= listen(look);
      look();
      return () => {
        followers.delete(follower);
        if (followers.size > 0) return;
        deafen?.();
        deafen = null;
      };
    },
    close() {
      closed = true;
      followers.clear();
      deafen?.();
      deafen = null;
    },
  };
}

function tellNewer(follower: Follower, now: number): void {
  if (now <= follower.last) return;
  follower.last = now;
  follower.tell(now);
}
