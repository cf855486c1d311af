import type { Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { readBuilds, readKit, type BuildSummary, type Kit } from '#db/read-builds.ts';

const SHORTEST = 4;

/** The build of a name, or of how its id begins. */
export async function namedBuild(lab: Lab, word: string): Promise<Outcome<Kit>> {
  return lab.read(async (tx): Promise<Outcome<Kit>> => {
    const builds = await readBuilds(tx);
    const byId = word.length < SHORTEST ? [] : builds.filter(({ id }) => id.startsWith(word.toLowerCase()));
    const found = byId.length ? byId : builds.filter(({ name }) => name === word);
    const [one, other] = found;
    if (!one) return { ok: false, refusal: { code: 'no-such-build', args: { build: word } } };
    if (other)
      return {
        ok: false,
        refusal: { code: 'several-builds', args: { build: word, builds: found.map(summary).join(', ') } },
      };
    const kit = await readKit(tx, one.id);
    return kit ? { ok: true, value: kit } : { ok: false, refusal: { code: 'no-such-build', args: { build: word } } };
  });
}

/** `5f0c2e1a of 2026-11-25 (reserved)` */
function summary({ id, reserved, state }: BuildSummary): string {
  return `${id.slice(0, 8)} of ${reserved.slice(0, 10)} (${state})`;
}
