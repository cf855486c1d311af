import type { Kind } from '#core/part/part.ts';

interface WordsOfCaution {
  readonly words: RegExp;
  /** null: any kind */
  readonly kinds: readonly Kind[] | null;
  /** more than a plain line asks: it counts where the line says it, not where the bag does */
  readonly ofLine?: true;
}

/**
 * Words that say of a part that nobody swaps it by rule, in the main European languages. Common practice of repair and safety standards
 * (parts marked as critical for safety are replaced by the same type alone: IEC 62368-1, from memory). A new word is a new row.
 */
export const NEVER_SWAPPED_WORDS: readonly WordsOfCaution[] = [
  // a resistor that is to burn open, or not to burn, is part of the protection
  { words: /fusible|flame-?\s?proof|non-?\s?flammable|flammhemmend|sicherungswiderstand|ininflammable|ignifug/iu, kinds: ['resistor'] },
  // its coefficient and its four terminals matter as much as its value
  { words: /current[ -]?sens|\bkelvin\b|\b(?:4|four)[ -]terminal/iu, kinds: ['resistor'] },
  { words: /\bmains\b|\bnetz(?:spannung|schalter|relais|trafo|kabel|filter)|\bsecteur\b|\bred eléctrica\b|\brete elettrica\b|\bnetspanning\b/iu, kinds: null },
  { words: /\bsafety\b|sicherheits(?!halter)|\bsécurité\b|\bsicurezza\b|\bseguridad\b|⚠|△/iu, kinds: null },
  // creepage and clearance are of the type, not of its rating
  { words: /opto-?\s?(?:coupler|isolator|koppler)|photo-?coupler|\bisolat(?:ed|or)\b|\bisoliert\b|\breinforced insulation\b/iu, kinds: ['ic', 'module', 'regulator', 'sensor', 'other'] },
  { words: /\bsurge\b|\bgas discharge\b|\bGDT\b|überspannungs|parafoudre|scaricatore/iu, kinds: null },
  { words: /\bthermal (?:fuse|cut-?\s?off|link|switch)|thermosicherung|temperatursicherung|fusible thermique/iu, kinds: null },
  { words: /\bprotection (?:board|circuit|module)|\bBMS\b|\bschutzschaltung/iu, kinds: null },
  { words: /\bmatched\b|\bselected\b|\bgepaart|\bselektiert|\bappair/iu, kinds: null, ofLine: true },
  { words: /\bAEC-?Q\d{3}\b|\bautomotive\b|\bmedical\b|\bmedizin/iu, kinds: null, ofLine: true },
];
