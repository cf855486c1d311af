import { readBands, readColour } from '#core/part/marking/bands.ts';
import { LOOKS, type Look, type MarkingRead } from '#core/part/marking/marking.ts';
import { readMarking } from '#core/part/marking/read-marking.ts';
import { writeMarkings, type Marking } from '#core/part/marking/write-markings.ts';
import { readPart } from '#core/part/read-part.ts';

interface Seen {
  /** null: it may be any part */
  readonly look: Look | null;
  /** from before the colours of tolerances changed in 2016 */
  readonly old: boolean;
  readonly underlined: boolean;
}

export const lookNamed = (word: string): Look | null => LOOKS.find((look) => look === word) ?? null;

/** What is typed of a part without its bag: words that are all colours are its bands, anything else is what is printed on it. */
export function readStray(words: readonly string[], { look, old, underlined }: Seen): MarkingRead {
  const colours = words.map(readColour).filter((colour) => colour !== null);
  if (look === 'bands' || (look === null && words.length > 0 && colours.length === words.length))
    return readBands(colours.length === words.length ? colours : [], { old });
  return readMarking(words.join(' '), { look, underlined });
}

/** What may be marked on the part that is described. */
export const markingsOf = (description: string): readonly Marking[] => writeMarkings(readPart(description).part);
