const NO = /^(?:0|no|n|false|nein|non|nee|nej|nie|ne|ei|нет|否|ー|off|-|–|—|\.|not? fitted)$/i;
const MARK =
  /(?:^|[\s,;:(/[_-])(?:DNP|DNF|DNI|DNM|DNS|do[\s_-]not[\s_-](?:fit|populate|place|install|mount|stuff|assemble|load)|not[\s_-](?:fitted|populated|mounted|placed|installed|assembled)|no[\s_-]?(?:mount|pop|stuff|load|fit)|unpopulated|unfitted|nicht best(?:ü|ue)ckt|unbest(?:ü|ue)ckt|non mont[eé]e?|no montar|non montare|niet plaatsen)(?:$|[\s,;:)/\]_-])|未実装|不贴|不焊|не (?:устанавливать|паять|ставить)/i;
/** marks so short that they count only as the whole of a cell */
const WHOLE = /^\(?(?:NF|NM|NP|NC|N\.B\.|NB|n\.b\.|exclude|excluded|omit|omitted|unused|none fitted)\)?$/i;

/** Whether a text says that the line is left off: `DNP`, `10k (DNF)`, `no mount`; with `short` also a lone `NF` or `NC`. */
export function saysNotFitted(text: string, short = true): boolean {
  const cell = text.trim();
  return cell !== '' && (MARK.test(cell) || (short && WHOLE.test(cell)));
}

/** A cell of a column such as DNP or 'exclude': any mark but a no means left off. */
export function notFittedCell(text: string): boolean {
  const cell = text.trim();
  return cell !== '' && !NO.test(cell) && !/^(?:fitted|fit|populated|populate|mounted|bestückt|n\/?a|yes, fitted)$/i.test(cell);
}

/** A cell of a column such as Populate or Fitted: a no, or a mark for left off. */
export function fittedCellSaysNo(text: string): boolean {
  const cell = text.trim();
  return cell !== '' && (NO.test(cell) || saysNotFitted(cell));
}
