import type { Page } from '@playwright/test';

/** The lab gets what is posted to an address, but its answers are lost on the way, until the function that comes back is called. */
export async function loseAnswers(page: Page, address: string): Promise<() => Promise<void>> {
  await page.route(address, async (route) => {
    if (route.request().method() !== 'POST') return route.fallback();
    await route.fetch();
    return route.abort();
  });
  return () => page.unrouteAll({ behavior: 'wait' });
}
