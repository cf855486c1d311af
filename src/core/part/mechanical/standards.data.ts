import type { Kind } from '../part.ts';

/** A standard of a fastener: what its number says of the part. Two numbers in one row name one part but for what `apart` says. */
export interface StandardRow {
  /** ISO first, then what stood before it: `ISO 4762`, `DIN 912` */
  readonly names: readonly string[];
  readonly kind: Kind;
  readonly head?: string;
  readonly drive?: string;
  /** words of the variant, as in `variant-words.data.ts` */
  readonly words?: string;
  /** sizes (M) from which the two are not one part, and why; then the number itself stands in the variant */
  readonly apart?: { readonly sizes: readonly string[] | 'all'; readonly in: string };
}

const WIDER = ['10', '12', '14'] as const;

/**
 * Product standards of small fasteners with their near equals (ISO and the DIN numbers that they replaced; most of the latter are
 * withdrawn and still sold). Lengths are measured under the head, of countersunk screws over all.
 */
export const STANDARDS: readonly StandardRow[] = [
  { names: ['ISO 4762', 'DIN 912'], kind: 'screw', head: 'cap', drive: 'hex' },
  { names: ['ISO 7380-1', 'ISO 7380'], kind: 'screw', head: 'button', drive: 'hex' },
  { names: ['ISO 7380-2'], kind: 'screw', head: 'button', drive: 'hex', words: 'collar' },
  { names: ['ISO 10642', 'DIN 7991'], kind: 'screw', head: 'countersunk', drive: 'hex', apart: { sizes: 'all', in: 'head' } },
  { names: ['ISO 14579'], kind: 'screw', head: 'cap', drive: 'torx' },
  { names: ['ISO 14580'], kind: 'screw', head: 'cap', drive: 'torx', words: 'low' },
  { names: ['ISO 14583'], kind: 'screw', head: 'pan', drive: 'torx' },
  { names: ['ISO 14581'], kind: 'screw', head: 'countersunk', drive: 'torx' },
  { names: ['ISO 7045', 'DIN 7985'], kind: 'screw', head: 'pan', drive: 'phillips', apart: { sizes: 'all', in: 'head' } },
  { names: ['ISO 7046-1', 'DIN 965', 'ISO 7046'], kind: 'screw', head: 'countersunk', drive: 'phillips' },
  { names: ['ISO 7047', 'DIN 966'], kind: 'screw', head: 'raised-countersunk', drive: 'phillips' },
  { names: ['ISO 1207', 'DIN 84'], kind: 'screw', head: 'cheese', drive: 'slot' },
  { names: ['ISO 1580', 'DIN 85'], kind: 'screw', head: 'pan', drive: 'slot' },
  { names: ['ISO 2009', 'DIN 963'], kind: 'screw', head: 'countersunk', drive: 'slot' },
  { names: ['ISO 2010', 'DIN 964'], kind: 'screw', head: 'raised-countersunk', drive: 'slot' },
  { names: ['ISO 4014', 'DIN 931'], kind: 'screw', head: 'hex', words: 'partial-thread', apart: { sizes: WIDER, in: 'across flats' } },
  { names: ['ISO 4017', 'DIN 933'], kind: 'screw', head: 'hex', words: 'full-thread', apart: { sizes: WIDER, in: 'across flats' } },
  { names: ['ISO 4026', 'DIN 913'], kind: 'screw', head: 'none', drive: 'hex', words: 'flat-point' },
  { names: ['ISO 4027', 'DIN 914'], kind: 'screw', head: 'none', drive: 'hex', words: 'cone-point' },
  { names: ['ISO 4028', 'DIN 915'], kind: 'screw', head: 'none', drive: 'hex', words: 'dog-point' },
  { names: ['ISO 4029', 'DIN 916'], kind: 'screw', head: 'none', drive: 'hex', words: 'cup-point' },
  { names: ['ISO 4032', 'DIN 934'], kind: 'nut', apart: { sizes: ['5', '6', '8', '10', '12', '14', '16'], in: 'height' } },
  { names: ['ISO 4033'], kind: 'nut', words: 'high' },
  { names: ['ISO 4035', 'DIN 439'], kind: 'nut', words: 'thin', apart: { sizes: WIDER, in: 'across flats' } },
  { names: ['ISO 7040', 'DIN 982'], kind: 'nut', words: 'high lock', apart: { sizes: 'all', in: 'height' } },
  { names: ['ISO 10511', 'DIN 985'], kind: 'nut', words: 'lock', apart: { sizes: ['5', '6', '8', '10', '12', '14', '16'], in: 'height' } },
  { names: ['ISO 4161', 'DIN 6923'], kind: 'nut', words: 'flange' },
  { names: ['DIN 562'], kind: 'nut', words: 'square' },
  { names: ['DIN 315'], kind: 'nut', words: 'wing' },
  { names: ['ISO 7089', 'DIN 125A', 'DIN 125'], kind: 'washer' },
  { names: ['ISO 7090', 'DIN 125B'], kind: 'washer', words: 'chamfered' },
  { names: ['ISO 7092', 'DIN 433'], kind: 'washer', words: 'small' },
  { names: ['ISO 7093-1', 'DIN 9021', 'ISO 7093'], kind: 'washer', words: 'large' },
  { names: ['DIN 127'], kind: 'washer', words: 'spring' },
  { names: ['DIN 6797'], kind: 'washer', words: 'toothed' },
  { names: ['DIN 6798'], kind: 'washer', words: 'serrated toothed' },
  { names: ['ISO 2338', 'DIN 7'], kind: 'mechanical', words: 'dowel-pin' },
  { names: ['ISO 8752', 'DIN 1481'], kind: 'mechanical', words: 'spring-pin' },
];
