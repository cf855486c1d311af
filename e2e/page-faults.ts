import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** Everything that a page must not do while it is open: errors in the console, requests to any other origin. */
export function watchPage(page: Page, origin: string): string[] {
  const faults: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') faults.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`thrown: ${error.message}`));
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (!['data:', 'blob:'].includes(url.protocol) && url.origin !== new URL(origin).origin)
      faults.push(`request to ${url.origin}`);
  });
  return faults;
}

/** What axe finds, as rule and place. */
export async function axeFaults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `axe ${id}: ${html.slice(0, 160)}`));
}

/** Fonts that the page's text is drawn with beside our own: a glyph that our font lacks is drawn with another. */
export async function strangeFonts(page: Page): Promise<string[]> {
  const session = await page.context().newCDPSession(page);
  await session.send('DOM.enable');
  await session.send('CSS.enable');
  const { root } = await session.send('DOM.getDocument', { depth: -1 });
  const { nodeIds } = await session.send('DOM.querySelectorAll', { nodeId: root.nodeId, selector: 'body' });
  const found = new Set<string>();
  for (const nodeId of nodeIds) {
    const { fonts } = await session.send('CSS.getPlatformFontsForNode', { nodeId });
    for (const font of fonts)
      if (!font.isCustomFont && font.glyphCount > 0) found.add(`font ${font.familyName}: ${font.glyphCount} glyphs`);
  }
  await session.detach();
  return [...found];
}

interface LayoutRules {
  /** a finger's page: targets of 44 px (WCAG 2.2, 2.5.5 Target Size, enhanced: 44 CSS px; links in a sentence excepted) */
  readonly fingers: boolean;
}

/** What sticks out sideways, is cut off, or is too small for a finger. */
export function layoutFaults(page: Page, { fingers }: LayoutRules): Promise<string[]> {
  return page.evaluate((forFingers) => {
    const faults: string[] = [];
    const shown = (element: Element): boolean =>
      element.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && !element.closest('.vh, [hidden]');
    const named = (element: Element): string =>
      `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''} “${(element.textContent ?? '').trim().slice(0, 50)}”`;
    /** where the words of a cell are drawn, without those that only a reader of the page aloud gets */
    const inkOf = (cell: Element): DOMRect[] => {
      const walker = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT);
      const found: DOMRect[] = [];
      while (walker.nextNode()) {
        let around = walker.currentNode.parentElement;
        while (around && around !== cell && getComputedStyle(around).clipPath === 'none') around = around.parentElement;
        if (around !== cell || (walker.currentNode.textContent ?? '').trim() === '') continue;
        const range = document.createRange();
        range.selectNodeContents(walker.currentNode);
        const ink = range.getBoundingClientRect();
        if (ink.width > 1) found.push(ink);
      }
      return found;
    };
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth > width + 1)
      faults.push(`the page is ${document.documentElement.scrollWidth} px wide of ${width}`);
    const all = [...document.querySelectorAll<HTMLElement>('body *')].filter(
      (element) => !(element instanceof SVGElement) && shown(element),
    );
    for (const element of all) {
      const style = getComputedStyle(element);
      const text = [...element.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? '').trim() !== '',
      );
      const box = element.getBoundingClientRect();
      const inScroller = element.closest('.scroll');
      if (text && !inScroller && (box.right > width + 1 || box.left < -1) && box.width > 1 && !element.closest('.skip'))
        faults.push(`sticks out by ${Math.round(Math.max(box.right - width, -box.left))} px: ${named(element)}`);
      const clips = ['hidden', 'clip'].includes(style.overflowX);
      if (clips && element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 1)
        faults.push(`is cut off: ${named(element)}`);
      if (style.textOverflow === 'ellipsis' && element.scrollWidth > element.clientWidth + 1)
        faults.push(`ends in dots: ${named(element)}`);
      if (
        element instanceof HTMLInputElement &&
        !['file', 'radio', 'checkbox'].includes(element.type) &&
        element.clientWidth < 24
      )
        faults.push(`field too narrow: ${named(element)}`);
    }
    // words that run over their neighbour in a row
    for (const row of document.querySelectorAll('tr')) {
      const cells = [...row.children].filter(shown);
      for (const cell of cells) {
        const own = cell.getBoundingClientRect();
        const over = Math.max(0, ...inkOf(cell).map(({ right }) => right - own.right));
        if (over > 2) faults.push(`runs out of its cell by ${Math.round(over)} px: ${named(cell)}`);
      }
    }
    if (!forFingers) return [...new Set(faults)];
    const targets = all.filter((element) =>
      element.matches(
        'a[href], button, input:not([type=hidden]):not([type=radio]):not([type=checkbox]):not([type=file]), select, textarea, summary, [role=button], label:has(input)',
      ),
    );
    for (const target of targets) {
      const box = target.getBoundingClientRect();
      if (box.width < 1 || box.height < 1) continue;
      const inSentence =
        target.matches('a') &&
        getComputedStyle(target).display === 'inline' &&
        target.closest('p, dt, dd, li, td, small, h1, h2') !== null;
      if (inSentence || target.closest('.skip')) continue;
      if (box.height < 43.5 || box.width < 43.5)
        faults.push(`too small for a finger, ${Math.round(box.width)} × ${Math.round(box.height)}: ${named(target)}`);
    }
    return [...new Set(faults)];
  }, fingers);
}

/** Makes every sentence of the page as long as German would: a third longer, with one long word. */
export function stretchWords(page: Page): Promise<void> {
  return page.evaluate(() => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const nodes: Text[] = [];
    while (walker.nextNode()) if (walker.currentNode instanceof Text) nodes.push(walker.currentNode);
    const isValue = (node: Text): boolean =>
      Boolean(node.parentElement?.closest('.tag, .ring, .v, .code, kbd, script, style, svg, option, .n'));
    for (const node of nodes) {
      const text = node.data.trim();
      if (isValue(node) || !/\p{L}{3}/u.test(text)) continue;
      const words = text.split(' ');
      const longest = words.toSorted((a, b) => b.length - a.length)[0] ?? '';
      const grown = longest + 'verwaltungsbestand'.slice(0, Math.max(3, Math.ceil(text.length / 3)));
      node.data = node.data.replace(longest, grown);
    }
  });
}
