/** Headings that say nothing of what stands under them. */
const EMPTY =
  /^(?:or|oder|and|und|notes?|others?|misc\w*|sonstige\w*|divers\w*|optional|required|recommended|parts?|components?|bom|bill of materials?|parts? lists?|stückliste|nomenclature|required parts)$/i;
/** a longer line is a sentence */
const LONGEST = 80;

/** The headings over a row that may state its kind or other facts. */
export function headingsThatTell(headings: readonly (string | null)[]): string[] {
  return headings.filter((heading) => heading !== null && heading.length < LONGEST && !EMPTY.test(heading)) as string[]; // as: null is filtered out
}
