import type { Kind } from '../part.ts';

/**
 * Words of fasteners and tubes as people label them, folded as in `words.ts` (trade usage, from memory): English and German in full, the
 * common ones in French, Spanish and Italian. The longest phrase is taken first; `word` is a word of the variant.
 */
export const MECHANICAL_WORDS: readonly (readonly [key: 'head' | 'drive' | 'material' | 'word', value: string, phrases: string, kinds: string])[] = [
  ['head', 'raised-countersunk', 'raised countersunk, oval head, linsensenkkopf, linsensenkschraube, fraisee bombee, gota de sebo', 'screw'],
  ['head', 'countersunk', 'countersunk, csk, flat head, flathead, senkkopf, senkschraube, senkkopfschraube, tete fraisee, fraisee, avellanado, avellanada, svasata, svasato', 'screw'],
  ['head', 'pan', 'pan, pan head, panhead, linsenkopf, linsenschraube, linsenkopfschraube, flachkopf, flachkopfschraube, cabeza alomada', 'screw'],
  ['head', 'button', 'button, button head, halbrundkopf, halbrundschraube, tete bombee, cabeza de boton, testa bombata', 'screw'],
  ['head', 'cheese', 'cheese head, cheese, fillister', 'screw'],
  ['head', 'cap', 'cap head, socket head, cylinder head, zylinderkopf, zylinderkopfschraube, zylinderschraube, tete cylindrique, cabeza cilindrica, testa cilindrica', 'screw'],
  ['head', 'hex', 'hex head, hex bolt, hexagon head, sechskantkopf, sechskantschraube, tete hexagonale, cabeza hexagonal, testa esagonale', 'screw'],
  ['head', 'none', 'grub, set screw, headless, gewindestift, madenschraube, sans tete, prisionero, grano', 'screw'],
  ['head', 'knurled', 'thumb screw, thumbscrew, randelschraube, raendelschraube, moletee, moleteado', 'screw'],
  ['drive', 'torx', 'torx, hexalobular, innensechsrund, tx, tx6, tx8, tx10, tx15, tx20, tx25, tx30, t6, t8, t10, t15, t20, t25, t30', 'screw'],
  ['drive', 'phillips', 'phillips, philips, cross recess, kreuzschlitz, cruciforme, a croce, ph0, ph1, ph2, ph', 'screw'],
  ['drive', 'pozidriv', 'pozidriv, pozi, pz0, pz1, pz2, pz', 'screw'],
  ['drive', 'slot', 'slot, slotted, schlitz, langsschlitz, laengsschlitz, fendue, ranurado, ranurada, a taglio', 'screw'],
  ['drive', 'hex', 'hex socket, hexagon socket, allen, inbus, innensechskant, six pans creux, btr, hexagono interior, brugola, esagono incassato', 'screw'],
  ['material', 'brass', 'brass, messing, laiton, laton, ottone', 'screw nut washer standoff mechanical'],
  ['material', 'nylon', 'nylon, polyamide, polyamid, pa6, pa66, poliamida', 'screw nut washer standoff mechanical'],
  ['material', 'stainless', 'stainless, inox, edelstahl, rostfrei, niro, nirosta, a2, a4, a2 70, a4 80, a2 50, v2a, v4a, inoxidable, inossidabile', 'screw nut washer standoff mechanical'],
  ['material', 'aluminium', 'aluminium, aluminum, alu, aluminio, alluminio', 'screw nut washer standoff mechanical'],
  ['material', 'titanium', 'titanium, titan, titane, titanio', 'screw nut washer standoff mechanical'],
  ['material', 'plastic', 'plastic, kunststoff, plastique, plastico, plastica', 'screw nut washer standoff mechanical'],
  ['material', 'steel-zinc', 'galvanized, galvanised, zinc plated, zinc, verzinkt, zingue, zincato, cincado', 'screw nut washer standoff mechanical'],
  ['word', 'a4', 'a4, a4 80, a4 70, v4a', 'screw nut washer standoff mechanical'], ['word', 'class-50', 'a2 50', 'screw nut'],
  ['word', 'black-oxide', 'black oxide, bruniert, bruniert schwarz, bruenieren, brunito, pavonado', 'screw nut washer'],
  ['word', 'mf', 'innen/außen, außen/innen, aussen innen, innen aussen, i/a, male/femelle, macho hembra, maschio femmina', 'standoff'],
  ['word', 'ff', 'innen innen, femelle femelle, hembra hembra, femmina femmina', 'standoff'],
  ['word', 'round', 'round, rund, ronde, redondo, tondo', 'standoff'],
  ['word', 'insert', 'threaded insert, heat set, heat set insert, insert, gewindeeinsatz, gewindebuchse, einschmelzmutter, einpressmutter, insert filete, inserto roscado, inserto filettato', 'nut mechanical'],
  ['word', 'lock', 'nyloc, nylock, stoppmutter, sicherungsmutter, selbstsichernd, ecrou frein, autobloccante, autoblocante', 'nut'],
  ['word', 'spring', 'federring, rondelle grower, rondelle ressort, arandela grower, rondella grower, split lock', 'washer'],
  ['word', '6.6', '6d', 'screw'], ['word', '6.8', '6s', 'screw'], ['word', '8.8', '8g', 'screw'], ['word', '10.9', '10k', 'screw'], ['word', '12.9', '12k', 'screw'],
  ['word', 'adhesive', 'adhesive, glue, glue lined, kleber, mit kleber, innenkleber, colle, adhesif, adhesivo, adesivo, dual wall', 'other'],
  ['word', 'clear', 'clear, transparent, klar, trasparente', 'other'],
];

/** Words that only say again what another fact of the part says. */
export const SAID_ALREADY: Readonly<Partial<Record<Kind, readonly string[]>>> = { mechanical: ['threaded', 'heat', 'set', 'gewindeeinsatz', 'gewindebuchse', 'einschmelzmutter', 'einpressmutter', 'filete', 'roscado', 'filettato', 'inserto'], nut: ['threaded', 'heat', 'set'] };
