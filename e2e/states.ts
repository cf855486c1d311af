import type { OpenLab } from './lab.ts';

/** A page in one of its states. */
export interface State {
  readonly name: string;
  readonly path: string;
  /** the refusal of the lab that this state is about, as the browser itself reports it */
  readonly refused?: RegExp;
}

interface Build {
  readonly id: string;
  readonly state: string;
  readonly name: string;
}

/** Every page of the lab in the states that an address can bring about. */
export async function statesOf(lab: OpenLab): Promise<State[]> {
  const { boards } = await get<{ boards: readonly { name: string }[] }>(lab, 'api/boards');
  const { builds } = await get<{ builds: readonly Build[] }>(lab, 'api/kits');
  const { bags } = await get<{ bags: readonly { bag: number; onHand: number; reserved: number }[] }>(lab, 'api/bags');
  const board = encodeURIComponent(boards[0]?.name ?? '');
  const reserved = bags.find((bag) => bag.reserved > 0) ?? bags[0];
  const exhausted = bags.find((bag) => bag.onHand === 0) ?? bags[0];
  const build = (...wanted: readonly string[]): string => {
    const found = builds.find(({ state }) => wanted.includes(state));
    if (!found) throw new Error(`the lab has no kit that is ${wanted.join(' or ')}`);
    return found.id;
  };
  const open = build('picking', 'reserved');
  const built = build('built');
  return [
    { name: 'find, nothing typed', path: '' },
    { name: 'find', path: '?words=4k7+0805' },
    { name: 'find, nothing like it', path: '?words=zzyzx' },
    { name: 'find, a bag', path: `?words=100n&bag=${reserved?.bag}` },
    { name: 'find, an exhausted bag', path: `?bag=${exhausted?.bag}` },
    { name: 'find, picking from a bag', path: `?bag=${reserved?.bag}&act=pick` },
    { name: 'find, no such bag', path: '?bag=99999', refused: /status of 404/ },
    { name: 'begin', path: 'begin' },
    { name: 'receive', path: 'receive?box=A' },
    { name: 'a list as it is read', path: `drafts/${await draftOf(lab, 'list', LIST)}` },
    { name: 'a BOM as it is read', path: `drafts/${await draftOf(lab, 'bom', BOM)}` },
    { name: 'boards', path: 'boards' },
    { name: 'a board', path: `boards/${board}?boards=40` },
    { name: 'a line of a board', path: `boards/${board}?boards=3&row=2` },
    { name: 'no such board', path: 'boards/no-such-board', refused: /status of 404/ },
    { name: 'kits', path: 'kits' },
    { name: 'a kit', path: `kits/${open}` },
    { name: 'a kit at the boxes', path: `kits/${open}/pick` },
    { name: 'a soldered kit', path: `kits/${built}` },
    { name: 'leftovers', path: `kits/${built}/leftovers` },
    { name: 'tray sheet', path: `kits/${open}/sheet` },
    { name: 'boxes', path: 'boxes' },
    { name: 'a box', path: 'boxes?box=A' },
    { name: 'a stray part', path: 'stray' },
    { name: 'a stray part, bands read both ways', path: 'stray?bands=brown.black.black.red.brown' },
    { name: 'a stray part, an ambiguous chip code', path: 'stray?look=chip&mark=10R' },
    { name: 'a stray part, a capacitor among safety parts', path: 'stray?look=capacitor&mark=2200' },
    { name: 'what was done', path: 'history' },
    { name: 'devices', path: 'devices' },
    { name: 'pairing', path: 'pair?code=NOTACODE', refused: /status of (?:401|404|409|422)/ },
    { name: 'keys', path: 'keys' },
    { name: 'no such page', path: 'nowhere', refused: /status of 404/ },
  ];
}

const LIST = [
  'Bag;What;Pcs',
  '901;4k7 1% 0805;about 50',
  '902;100n X7R 50V 0805;1240',
  '903;4,7;12',
  '904;Steckverbinderkabelkonfektionierungszubehörsatzverpackungseinheit;3',
].join('\n');
const BOM = [
  'Refs,Val,Shape,Pcs',
  'R1 R2,4k7 1%,0805,3',
  'C1,"4,7",0805,1',
  'U1,LM35DZ,TO-92,1',
  'J1,Steckverbinderkabelkonfektionierungszubehörsatzverpackungseinheit,,1',
].join('\n');

async function draftOf(lab: OpenLab, is: 'list' | 'bom', text: string): Promise<string> {
  const answer = await fetch(`${lab.url}api/drafts?is=${is}&name=${is === 'list' ? 'shelf' : 'practice board'}.csv`, {
    method: 'POST',
    headers: { 'content-type': 'application/octet-stream' },
    body: text,
  });
  const { draft } = (await answer.json()) as { draft?: string }; // as: the API's shape
  if (!draft) throw new Error(`the lab kept no draft: ${answer.status}`);
  return draft;
}

async function get<T>(lab: OpenLab, path: string): Promise<T> {
  const answer = await fetch(lab.url + path);
  if (!answer.ok) throw new Error(`${path} answered ${answer.status}`);
  return (await answer.json()) as T; // as: the API's shape
}
