/** What a person did, by the kind of the act: `picked-for-build` → `kit picked`. */
const DEEDS: Readonly<Record<string, string>> = {
  received: 'received',
  imported: 'list imported',
  picked: 'picked',
  returned: 'put back',
  counted: 'counted',
  'set-aside': 'bag marked',
  'boxes-arranged': 'boxes arranged',
  'board-saved': 'board saved',
  chosen: 'bag chosen by hand',
  'fit-later': 'fit later changed',
  planned: 'build planned',
  reserved: 'kit reserved',
  'picked-for-build': 'kit picked',
  built: 'boards soldered',
  'leftovers-returned': 'leftovers put back',
  cancelled: 'build given up',
};

export function deedName(kind: string): string {
  return DEEDS[kind] ?? kind;
}

/** One act in a list: `took back 5f0c2e1a (kit picked)`. */
export function deedText({ kind, undoes }: { readonly kind: string; readonly undoes: string | null }): string {
  return undoes === null ? deedName(kind) : `took back ${undoes.slice(0, 8)} (${deedName(kind)})`;
}
