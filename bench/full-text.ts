import { DatabaseSync } from 'node:sqlite';
import type { Bag, Stock } from '#core/stock/stock.ts';

export interface FullText {
  /** best first by bm25 */
  ranked(words: string, limit: number): number[];
  /** the first that are met */
  unranked(words: string, limit: number): number[];
  close(): void;
}

/** The same bags in a full-text table of SQLite, in memory: what a lab would use that has no index of its own. */
export function openFullText(stock: Stock): FullText {
  const db = new DatabaseSync(':memory:');
  db.exec(`create virtual table bag using fts5(said, tokenize = 'unicode61', prefix = '2 3')`);
  const insert = db.prepare('insert into bag(rowid, said) values (?, ?)');
  db.exec('begin');
  for (const bag of stock.bags) insert.run(bag.number, said(bag));
  db.exec('commit');
  const ranked = db.prepare('select rowid from bag where bag match ? order by rank limit ?');
  const unranked = db.prepare('select rowid from bag where bag match ? limit ?');
  return {
    ranked: (words, limit) => ranked.all(asMatch(words), limit).map((row) => Number(row['rowid'])),
    unranked: (words, limit) => unranked.all(asMatch(words), limit).map((row) => Number(row['rowid'])),
    close: () => db.close(),
  };
}

function said(bag: Bag): string {
  return [bag.number, bag.code, bag.part.text, bag.part.kind, bag.box, bag.place].join(' ');
}

/** Every word, each as a beginning. */
function asMatch(words: string): string {
  return words
    .split(/\s+/)
    .map((word) => `"${word.replaceAll('"', '')}"*`)
    .join(' ');
}
