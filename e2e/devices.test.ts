import assert from 'node:assert/strict';
import { networkInterfaces } from 'node:os';
import { after, before, test } from 'node:test';
import type { Browser } from '@playwright/test';
import { DESK, PHONE, openBrowser } from './browser.ts';
import { openLab, type OpenLab } from './lab.ts';
import { axeFaults, layoutFaults, watchPage } from './page-faults.ts';

const browser: Browser | null = await openBrowser();
/** A machine without a network has nobody to invite. */
const networked = Object.values(networkInterfaces()).some((all) =>
  all?.some(({ internal, family }) => !internal && family === 'IPv4'),
);
const skip = networked ? false : 'this machine has no address in a network';

if (browser) {
  let lab: OpenLab;
  before(async () => {
    lab = await openLab({ demo: false, lan: networked });
  });
  after(async () => {
    await lab.close();
    await browser.close();
  });

  void test('a phone is invited, joins under its name, is seen at once at the desk, and is forgotten', { skip }, async () => {
    const room = await browser.newContext(DESK);
    const desk = await room.newPage();
    const faults = watchPage(desk, lab.url);
    await desk.goto(`${lab.url}devices`);
    await desk.getByRole('button', { name: 'Invite a phone' }).click();
    const shown = desk.getByText(/https?:\/\/\S+\/pair\?code=/);
    const url = (await shown.innerText()).trim();
    assert.deepEqual([...(await axeFaults(desk)), ...(await layoutFaults(desk, { fingers: false }))], []);

    const hand = await browser.newContext(PHONE);
    const phone = await hand.newPage();
    await phone.goto(new URL('/', url).href);
    await phone.getByRole('heading', { name: 'This device is not known to the lab yet.' }).waitFor();
    await phone.goto(url);
    await phone.getByLabel('Name of this device').fill('Phone at the shelf');
    assert.deepEqual([...(await axeFaults(phone)), ...(await layoutFaults(phone, { fingers: true }))], []);
    await phone.getByRole('button', { name: 'Join the lab' }).click();
    await phone.waitForURL(/\/kits/);
    await desk.getByRole('cell', { name: 'Phone at the shelf', exact: true }).waitFor();

    // the code works once
    const second = await browser.newPage();
    await second.goto(url);
    await second.getByLabel('Name of this device').fill('Another phone');
    await second.getByRole('button', { name: 'Join the lab' }).click();
    await second.getByText('This code is not known here').waitFor();

    await desk.getByRole('button', { name: /^Forget/ }).click();
    await desk.getByRole('cell', { name: 'Phone at the shelf', exact: true }).waitFor({ state: 'detached' });
    await phone.reload();
    await phone.getByRole('heading', { name: 'This device is not known to the lab yet.' }).waitFor();
    assert.deepEqual(faults, []);
    await Promise.all([room.close(), second.close(), hand.close()]);
  });

  void test('a lab that is open to this machine alone says how to open it', async () => {
    const closed = await openLab({ demo: false });
    const page = await browser.newPage();
    await page.goto(`${closed.url}devices`);
    await page.getByRole('heading', { name: 'Only this machine can see the lab.' }).waitFor();
    await page.getByText('serve --lan').first().waitFor();
    assert.equal(await page.getByRole('button', { name: 'Invite a phone' }).count(), 0);
    await page.close();
    await closed.close();
  });
}
