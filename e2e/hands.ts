import type { Locator, Page } from '@playwright/test';

/** How a person works a page: what they do, and how often they did something. */
export interface Hands {
  readonly name: string;
  readonly make: (page: Page) => Hand;
}

export interface Hand {
  press(target: Locator): Promise<void>;
  /** puts text into a field */
  type(field: Locator, text: string): Promise<void>;
  key(key: string): Promise<void>;
  /** gives a file to a button that chooses one */
  file(button: Locator, file: { readonly name: string; readonly text: string }): Promise<void>;
  /** what was done so far: a press, a text put in, a key, a file given */
  readonly actions: () => number;
}

export const byPointer: Hands = {
  name: 'by pointer',
  make(page) {
    let actions = 0;
    return {
      actions: () => actions,
      async press(target) {
        actions += 1;
        await target.click();
      },
      async type(field, text) {
        actions += 1;
        await field.fill(text);
      },
      async key(key) {
        actions += 1;
        await page.keyboard.press(key);
      },
      async file(button, { name, text }) {
        actions += 1;
        const chooser = page.waitForEvent('filechooser');
        await button.click();
        await (await chooser).setFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
      },
    };
  },
};

/** Tabs to reach one thing, at most: more is no way for anybody. */
const MOST_TABS = 120;

/** The keyboard alone: Tab to the thing, then Enter or the space bar. Walking counts for nothing, pressing does. */
export const byKeys: Hands = {
  name: 'by keyboard alone',
  make(page) {
    let actions = 0;
    const walkTo = async (target: Locator): Promise<void> => {
      await target.waitFor();
      const there = (): Promise<boolean> => target.evaluate((element) => element === document.activeElement);
      for (let tabs = 0; tabs < MOST_TABS; tabs += 1) {
        if (await there()) return;
        await page.keyboard.press('Tab');
      }
      throw new Error(`Tab never comes to ${String(target)}`);
    };
    return {
      actions: () => actions,
      async press(target) {
        actions += 1;
        await walkTo(target);
        const box = await target.evaluate((element) => element instanceof HTMLInputElement);
        await page.keyboard.press(box ? 'Space' : 'Enter');
      },
      async type(field, text) {
        actions += 1;
        await walkTo(field);
        await page.keyboard.press('Control+a');
        await page.keyboard.type(text);
      },
      async key(key) {
        actions += 1;
        await page.keyboard.press(key);
      },
      async file(button, { name, text }) {
        actions += 1;
        await walkTo(button);
        const chooser = page.waitForEvent('filechooser');
        await page.keyboard.press('Enter');
        await (await chooser).setFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
      },
    };
  },
};
