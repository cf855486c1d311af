/** Longer ones may break: they would run out of a narrow cell. */
const MOST = 14;

/** A text in pieces, with the sizes and short codes that no line may break: `5 × 20`, `HC-49S`. */
export function unbroken(text: string): readonly { readonly text: string; readonly whole: boolean }[] {
  return text
    .split(/(\S+ × \S+|\S*[A-Z\d]-[A-Z\d]\S*)/)
    .map((piece, at) => ({ text: piece, whole: at % 2 === 1 && piece.length <= MOST }))
    .filter((piece) => piece.text !== '');
}
