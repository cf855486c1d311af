import type { Tx } from './engine.ts';

/** A name that no other build has: `z`, and where there is one already `z (2)`. */
export async function freeBuildName(tx: Tx, wanted: string): Promise<string> {
  const rows = await tx.selectFrom('build').select('name').where('state', '!=', 'undone').execute();
  const taken = new Set(rows.map(({ name }) => name));
  let name = wanted;
  for (let count = 2; taken.has(name); count++) name = `${wanted} (${count})`;
  return name;
}
