import type { Doubt } from '#core/part/doubt.ts';
import { doubtedFields, isAssumption, isOfPart, withDoubts } from '#core/part/doubted.ts';
import { glossPart } from '#core/part/gloss.ts';
import { partCode } from '#core/part/part-code.ts';
import type { Kind, Part } from '#core/part/part.ts';
import { readPart } from '#core/part/read-part.ts';
import { doubtText, keptDoubt } from '#say/en/doubts.ts';
import { NOTE, sayGloss, type GlossWords } from '#say/en/gloss.ts';
import { sayPart, type SaidPart } from '#say/en/said.ts';
import { REMARK } from './plan-import.ts';

/** A doubt about one field, in words. */
export interface DoubtWords {
  readonly field: string;
  readonly why: string;
  readonly settle: string;
}

export interface PartWords {
  readonly said: SaidPart;
  readonly code: string;
  readonly kind: Kind;
  readonly gloss: readonly GlossWords[];
  readonly doubts: readonly DoubtWords[];
}

/** How a text is read as a part, in words. */
export function readInWords(text: string): PartWords {
  const { part, doubts } = readPart(text);
  return inWords(withDoubts({ ...part, text: text.trim() }, doubts), doubts);
}

/** A bag's part in words: what is written on it over how it was read, and what is in doubt about it to this day. */
export function bagInWords(part: Part): PartWords {
  const open = new Set(doubtedFields(part));
  const words = inWords(part, open.size === 0 ? [] : readPart(part.text).doubts.filter(({ field }) => open.has(field)), [
    ...open,
  ]);
  return { ...words, gloss: withNotes(words.gloss, part.text) };
}

/** What stands behind the part is a remark of the list that it came with: what no reading claims there is a note, and no fault. */
function withNotes(gloss: readonly GlossWords[], text: string): GlossWords[] {
  const behind = text.indexOf(REMARK);
  let from = 0;
  return gloss.map((piece) => {
    const at = text.indexOf(piece.typed, from);
    if (at < 0) return piece;
    from = at + piece.typed.length;
    return piece.how === 'unread' && behind >= 0 && at > behind ? { ...piece, means: NOTE, how: 'filled' as const } : piece;
  });
}

/** A doubt that came with the columns of a list is no longer in the text; it still stands. */
function inWords(part: Part, doubts: readonly Doubt[], fields: readonly string[] = []): PartWords {
  const told = doubts.filter((doubt) => isOfPart(doubt) && !isAssumption(doubt));
  const lost = fields.filter((field) => !told.some((doubt) => doubt.field === field));
  return {
    said: sayPart(part),
    code: partCode(part),
    kind: part.kind,
    gloss: sayGloss(glossPart(part.text, part, told), part.kind),
    doubts: [
      ...told.map((doubt) => ({ field: doubt.field, ...doubtText(doubt) })),
      ...lost.map((field) => ({ field, ...keptDoubt(field) })),
    ],
  };
}
