import type { Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { readBuilds, readKit, type Kit } from '#db/read-builds.ts';

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
        refusal: {
          code: 'not-valid',
          args: { field: 'BUILD', received: word, expected: 'the id of one build: several go by this name' },
        },
      };
    const kit = await readKit(tx, one.id);
    return kit ? { ok: true, value: kit } : { ok: false, refusal: { code: 'no-such-build', args: { build: word } } };
  });
}
