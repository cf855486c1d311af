import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openLab, type OpenLab } from './lab.ts';

const LONG = 'Steckverbinderkabelkonfektionierungszubehörsatzverpackung';
const NAMED = 'Connector, rectangular, wire to board, 2 × 17 ways, latching';
const BOARD = 'Straßenbahnhaltestellenanzeigetafelansteuerungsplatine Nr. 12';

const LIST = [
  ['Bag', 'Box', 'What', 'Pcs', 'Supplier'],
  ['1', 'A', `${LONG} 0805`, '12400000', 'Bauteilevertriebsgesellschaft mit beschränkter Haftung'],
  ['2', 'A', NAMED, '7', ''],
  ['1024', 'A', '4k7 1% 0805', '999999', ''],
  ['3', 'Kellerregalfachbodenmitte', '100n X7R 50V 0805', '100', ''],
  ['99999', 'B', '22p C0G 50V 0603', '0', ''],
];
const BOM = [
  ['Refs', 'Value', 'Qty'],
  ['R1 R2 R3 R4 R5 R6 R7 R8 R9 R10 R12 R14 R16 R18 R20 R22 R24 R26 R28 R30 R32', '4k7 1% 0805', '21'],
  ['C1', '100n X7R 50V 0805', '1'],
  ['J1', `${LONG} 0805`, '1'],
  ['J2', NAMED, '1'],
  ['C2 C3', '22p C0G 50V 0603', '2'],
];

const csv = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => row.map((cell) => `"${cell}"`).join(',')).join('\n');

/** A lab of long names and great numbers, with a kit on the way and one that is soldered. */
export async function hardLab(): Promise<OpenLab> {
  const lab = await openLab({ demo: false });
  try {
    await fill(lab);
    return lab;
  } catch (error) {
    await lab.close();
    throw error;
  }
}

async function fill(lab: OpenLab): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'bagatelle-hard-'));
  const [list, bom] = [join(folder, 'list.csv'), join(folder, 'bom.csv')];
  writeFileSync(list, csv(LIST));
  writeFileSync(bom, csv(BOM));
  lab.command('import', list);
  lab.command('save', bom, '--name', BOARD);
  rmSync(folder, { recursive: true });
  const wish = { board: BOARD, boards: 2, reserve: true, anyway: true, name: `${BOARD} für die Werkstatt` };
  const soldered = await post(lab, 'kits', wish);
  await post(lab, `kits/${soldered.build}/picks`, {});
  await post(lab, `kits/${soldered.build}/finish`, { made: 1 });
  await post(lab, 'kits', { ...wish, name: `${BOARD} zum zweiten` });
}

async function post(lab: OpenLab, path: string, body: object): Promise<{ build?: string }> {
  const answer = await fetch(`${lab.url}api/${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ id: crypto.randomUUID(), ...body }),
  });
  if (!answer.ok) throw new Error(`${path}: ${await answer.text()}`);
  return (await answer.json()) as { build?: string }; // as: the API's shape
}
