import type { Browser } from '@playwright/test';
import { DESK, PHONE } from './browser.ts';
import type { Hands } from './hands.ts';
import type { OpenLab } from './lab.ts';

const LIST = {
  name: 'shelf.csv',
  text: [
    'Bag,Box,What,Pieces',
    '1,A,4k7 1% 0805,240',
    '2,A,100n X7R 50V 0805,1200',
    '3,A,LM35DZ TO-92,25',
    '4,B,LED green 0805,60',
    '5,B,M3x8 pan head screw,180',
  ].join('\n'),
};
const BOM = {
  name: 'Window sensor.csv',
  text: [
    'Refs,Value,Qty',
    'R1 R2,4k7 1% 0805,2',
    'C1 C2 C3,100n X7R 50V 0805,3',
    'U1,LM35DZ TO-92,1',
    'D1,LED green 0805,1',
    'MH1 MH2 MH3 MH4,M3x8 pan head screw,4',
  ].join('\n'),
};

interface Evening {
  /** from the first page to the planned kit */
  readonly actions: number;
  readonly onHand: Readonly<Record<number, number>>;
}

/** First run, a list, a BOM, a kit for three boards, its pick on a phone, soldered, leftovers back. */
export async function eveningWith(browser: Browser, lab: OpenLab, hands: Hands): Promise<Evening> {
  const desk = await browser.newPage(DESK);
  const hand = hands.make(desk);
  await desk.goto(lab.url);
  await hand.file(desk.getByRole('button', { name: 'Choose a list' }), LIST);
  await hand.press(desk.getByRole('button', { name: 'Make 5 bags' }));
  await desk.getByRole('heading', { name: /^5 bags were made/ }).waitFor();
  await hand.press(desk.getByRole('link', { name: 'Boards' }).first());
  await hand.file(desk.getByRole('button', { name: 'Bring a BOM' }), BOM);
  await hand.press(desk.getByRole('button', { name: /^Keep as Window sensor/ }));
  await hand.type(desk.getByLabel('Boards to build'), '3');
  await hand.key('Enter');
  await desk.getByRole('heading', { name: 'Window sensor: you can build all 3.' }).waitFor();
  await hand.press(desk.getByRole('button', { name: /^Plan a kit for 3/ }));
  await desk.waitForURL(/\/kits\/[0-9a-f-]{36}/);
  const actions = hand.actions();

  await pickInTheHand(browser, desk.url(), hands);
  await desk.getByRole('heading', { name: /All 5 are in the tray/ }).waitFor();
  await hand.press(desk.getByRole('button', { name: '3 boards are soldered' }));
  await desk.waitForURL(/\/leftovers/);
  await hand.press(desk.getByRole('button', { name: /^Take \d+ back/ }));
  await desk
    .getByText(/went back|came back/)
    .first()
    .waitFor();
  const onHand = await balances(lab);
  await desk.close();
  return { actions, onHand };
}

/** The phone at the boxes, 390 px wide: stop by stop, then the rest of a box at once. */
async function pickInTheHand(browser: Browser, kit: string, hands: Hands): Promise<void> {
  const context = await browser.newContext(PHONE);
  const phone = await context.newPage();
  const hand = hands.make(phone);
  await phone.goto(`${kit.split('?')[0]}/pick`);
  await hand.press(phone.getByRole('button', { name: /are in cell|is in cell/ }));
  await phone.getByText('1 of 5 in').waitFor();
  await hand.press(phone.getByRole('button', { name: /^All \d of box A as planned/ }));
  await phone.getByText('3 of 5 in').waitFor();
  await hand.press(phone.getByRole('button', { name: /^All \d of box B as planned/ }));
  await phone.getByText('5 of 5 in').waitFor();
  await context.close();
}

async function balances(lab: OpenLab): Promise<Record<number, number>> {
  const answer = await fetch(`${lab.url}api/bags`);
  const { bags } = (await answer.json()) as { bags: readonly { bag: number; onHand: number }[] }; // as: the API's shape
  return Object.fromEntries(bags.map(({ bag, onHand }) => [bag, onHand]));
}
