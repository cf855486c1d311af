import { headerMeanings } from './read-header.ts';

const NO = /^(?:0|no|n|false|nein|non|nee|nej|nie|ne|ei|нет|否|ー|off|-|–|—|\.|not? fitted)$/i;
const MARK =
  /(?:^|[\s,;:(/[_-])(?:DNP|DNF|DNI|DNM|DNS|do[\s_-]not[\s_-](?:fit|populate|place|install|mount|stuff|assemble|load)|not[\s_-](?:fitted|populated|mounted|placed|installed|assembled)|no[\s_-]?(?:mount|pop|stuff|load|fit)|unpopulated|unfitted|nicht best(?:ü|ue|u)ck(?:t|en)|unbest(?:ü|ue|u)ckt|non mont[eé]e?|ne pas monter|no montar|non montare|niet (?:plaatsen|geplaatst)|monteras ej|ei asenneta|nie montowa[cć])(?:$|[\s,;:)/\]_-])|未実装|不贴|不焊|не (?:устанавливать|паять|ставить)/i;
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

const YES = /^(?:1|x|y|yes|true|on|ok|✓|✔|☑|ja|jo|oui|si|sí|sì|sim|tak|ano|da|kyllä|joo|igen|evet|да|是|はい|예|○|yes, fitted)$/i;
/** how or where it is fitted, so it is */
const SOMEHOW = /^(?:smd|smt|tht|th|both|top|bottom|front|back|all)$/i;

/** A cell that answers yes or no, or says it in the words of such a column; null where it is neither: `vielleicht`, `rev B only`. */
export function yesOrNo(text: string): boolean | null {
  const cell = text.trim();
  if (NO.test(cell) || saysNotFitted(cell)) return false;
  if (YES.test(cell)) return true;
  // a sign or another word beside it may turn its meaning round: `bestückt?`, `no fit`
  const meanings = /^(?!no )[\p{L}\p{M}]+(?:[ -][\p{L}\p{M}]+)*$/iu.test(cell) ? headerMeanings(cell) : [];
  const role = meanings.find(({ strength }) => strength === 1)?.role ?? (/^fit$/i.test(cell) ? 'fitted' : null);
  return role === 'fitted' ? true : role === 'not-fitted' ? false : null;
}

/** A cell of a column such as Populate or Fitted; null where it is not understood. */
export function fittedCell(text: string): boolean | null {
  return yesOrNo(text) ?? (SOMEHOW.test(text.trim()) ? true : null);
}
