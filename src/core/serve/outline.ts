import { SAME_OUTLINE, SIMILAR_OUTLINE } from './packages.data.ts';

export type Fit = 'same' | 'similar' | 'differs';

const bare = (name: string): string => name.toUpperCase().replaceAll(/[\s_-]/g, '');
const GROUP = new Map(SAME_OUTLINE.flatMap((names, group) => names.map((name): [string, string] => [bare(name), `=${group}`])));
const groupOf = (name: string): string => GROUP.get(bare(name)) ?? bare(name);
const SIMILAR = new Set(
  SIMILAR_OUTLINE.flatMap((names) => names.flatMap((a) => names.map((b) => `${groupOf(a)}/${groupOf(b)}`))),
);

const CHIP =
  /^(?:008004|01005|015015|0[12346][0-9]{2}|0[58]0[458]|1008|1111|12[01][0568]|18(?:06|08|12|25)|2010|22(?:11|20|25)|25(?:12|20)|2816|3640)$/;
const AXIAL = /^(?:DIN|AXIAL|D?IN0)/i;

/** A chip size such as `0603`: a ceramic or thick-film body, never a tantalum case (`EIA-3216` is not `1206`). */
export function isChip(name: string): boolean {
  return CHIP.test(name);
}

/**
 * Do two package names mean one outline? Names of one outline: `TO-236AB`, `SOT-23` → same. Look-alikes, and a family named
 * without its pins (`SOIC`, `SOIC-8`): similar. A tantalum case never equals a chip size, whatever its digits: `EIA-3216`, `1206` → differs.
 */
export function fit(has: string, asked: string): Fit {
  const [a, b] = [groupOf(has), groupOf(asked)];
  if (a === b) return 'same';
  if (SIMILAR.has(`${a}/${b}`) || (AXIAL.test(has) && AXIAL.test(asked))) return 'similar';
  return namesFamilyOf(has, asked) || namesFamilyOf(asked, has) ? 'similar' : 'differs';
}

/** `SOIC` names the family of `SOIC-8`; `SOT-23` does not name that of `SOT-23-5`. */
function namesFamilyOf(family: string, member: string): boolean {
  return /^[A-Z]+$/i.test(family) && new RegExp(`^${family}-?\\d+$`, 'i').test(member);
}
