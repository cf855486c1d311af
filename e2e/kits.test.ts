import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser, Page } from '@playwright/test';
import type { BuildView, KitTakeView, KitView } from '#api/kits.ts';
import { openBrowser, PHONE } from './browser.ts';
import { openLab, type OpenLab } from './lab.ts';
import { axeFaults, layoutFaults, watchPage } from './page-faults.ts';

const browser: Browser | null = await openBrowser();

if (browser) {
  let lab: OpenLab;
  let build: string;
  before(async () => {
    lab = await openLab({ demo: true });
    const { builds } = await get<{ builds: BuildView[] }>('api/kits');
    build = builds.find(({ state }) => state === 'reserved')?.id ?? assert.fail('the demo has a reserved kit');
  });
  after(async () => {
    await lab.close();
    await browser.close();
  });

  const get = async <T>(path: string): Promise<T> => (await (await fetch(lab.url + path)).json()) as T; // as: the API's shape
  const kit = (): Promise<KitView> => get(`api/kits/${build}`);
  const onHand = async (bag: number): Promise<number> => (await get<{ onHand: number }>(`api/bags/${bag}`)).onHand;
  const first = async (): Promise<KitTakeView> => {
    const open = (await kit()).takes.find(({ state }) => state === 'open');
    return open ?? assert.fail('a stop is open');
  };
  const phone = async (): Promise<Page> => (await browser.newContext(PHONE)).newPage();

  void test('with one hand at the boxes: as planned, undone, fewer, skipped, the wrong bag; each right to the piece', async () => {
    const page = await phone();
    const faults = watchPage(page, lab.url);
    await page.goto(`${lab.url}kits/${build}/pick`);
    const stop = await first();
    const before = await onHand(stop.bag);
    await page.getByRole('button', { name: new RegExp(`^${stop.planned} (is|are) in cell`) }).click();
    await page.getByText('1 of').first().waitFor();
    assert.equal(await onHand(stop.bag), before - stop.planned);
    await page.getByRole('button', { name: /^Undo the last pick/ }).click();
    await page.getByText('Taken back').waitFor();
    assert.equal(await onHand(stop.bag), before);

    await page.getByRole('button', { name: 'Fewer or more' }).click();
    await page.getByLabel(/^How many went into cell/).fill(String(stop.planned - 1));
    await page.getByRole('button', { name: /the bag gave no more$/ }).click();
    await page.getByText('1 of').first().waitFor();
    assert.equal(await onHand(stop.bag), before - stop.planned + 1);
    assert.equal((await kit()).takes.find(({ id }) => id === stop.id)?.state, 'done');

    const next = await first();
    await page.getByRole('button', { name: 'Is it the right bag?' }).click();
    await page.getByLabel('Which bag is in your hand?').fill(String(stop.bag));
    await page.getByRole('button', { name: 'Look it up' }).click();
    await page.getByText('Wrong bag.').waitFor();
    await page.getByRole('button', { name: 'Which bag is in your hand?' }).click();
    await page.getByLabel('Which bag is in your hand?').fill(String(next.bag));
    await page.getByRole('button', { name: 'Look it up' }).click();
    await page.getByText(`Bag ${next.bag}, the right one.`).waitFor();
    await page.getByRole('button', { name: `Go on with bag ${next.bag}` }).click();
    await page.getByRole('button', { name: 'Skip for now' }).click();
    await page.waitForURL(/skipped=/);
    assert.equal((await kit()).takes.find(({ id }) => id === next.id)?.picked, 0);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      assert.deepEqual([...faults, ...(await axeFaults(page)), ...(await layoutFaults(page, { fingers: true }))], []);
    }
    await page.context().close();
  });

  void test('two pages on one kit see each other, and a number that is being typed stays', async () => {
    const [one, two] = [await phone(), await phone()];
    const stop = await first();
    const own = `${lab.url}kits/${build}/pick?take=${stop.id.slice(0, 8)}`;
    await one.goto(own);
    await two.goto(`${own}&show=fewer`);
    await two.getByLabel(/^How many went into cell/).fill('3');
    await one.getByRole('button', { name: new RegExp(`^${stop.planned} (is|are) in cell`) }).click();
    await two.getByText(`Bag ${stop.bag} was picked meanwhile`).waitFor();
    assert.equal(await two.getByLabel(/^How many went into cell/).inputValue(), '3');
    const next = await first();
    await two.getByRole('button', { name: 'Go on with the next bag' }).click();
    await two.getByRole('button', { name: new RegExp(`^${next.planned} (is|are) in cell`) }).waitFor();
    await one.context().close();
    await two.context().close();
  });

  void test('box by box to the end, soldered, and the leftovers are back to the piece', async () => {
    const page = await phone();
    await page.goto(`${lab.url}kits/${build}/pick`);
    for (let left = (await kit()).takes.length; left > 0 && (await kit()).build.open > 0; left -= 1) {
      const { open } = (await kit()).build;
      await page
        .getByRole('button', { name: /^(All|The other) \d+ .*as planned$/ })
        .or(page.locator('.thumb > .btn.main'))
        .last()
        .click();
      await page.waitForFunction(
        (had) => document.querySelector('.onehand .prog .rail')?.getAttribute('aria-valuenow') !== had,
        String((await kit()).takes.length - open),
      );
    }
    await page.getByText('All bags are in the tray.').waitFor();
    await page
      .getByRole('button', { name: /soldered$/ })
      .or(page.getByRole('button', { name: 'No board was made' }))
      .click();
    await page.waitForURL(/leftovers$/);
    const back = (await kit()).takes.filter(({ expected }) => expected > 0);
    const before = await Promise.all(back.map(({ bag }) => onHand(bag)));
    const pieces = back.reduce((sum, { expected }) => sum + expected, 0);
    await page.getByRole('button', { name: `Take ${pieces} back` }).click();
    await page.getByText(`${pieces} pieces went back into the bags.`).first().waitFor();
    const perBag = new Map<number, number>();
    for (const { bag, expected } of back) perBag.set(bag, (perBag.get(bag) ?? 0) + expected);
    assert.deepEqual(
      await Promise.all(back.map(({ bag }) => onHand(bag))),
      back.map(({ bag }, at) => (before[at] ?? 0) + (perBag.get(bag) ?? 0)),
    );
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await page.getByText('Taken back').waitFor();
    assert.deepEqual(await Promise.all(back.map(({ bag }) => onHand(bag))), before);
    assert.deepEqual([...(await axeFaults(page)), ...(await layoutFaults(page, { fingers: true }))], []);
    await page.context().close();
  });
}
