import { counted } from './ui.ts';

/** Lines of a long list that do not stand on the page; null where all do. */
export function sayMoreLines(more: number, doubted: number): string | null {
  const said = [];
  if (more > 0) said.push(`And ${counted(more, 'more line', 'more lines')} read without doubt.`);
  if (doubted > 0)
    said.push(`${counted(doubted, 'more line with a doubt comes', 'more lines with doubts come')} as these get their answer.`);
  return said.length > 0 ? said.join(' ') : null;
}
