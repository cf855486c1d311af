import { createRootRoute, createRoute, createRouter, lazyRouteComponent } from '@tanstack/react-router';
import { pickWords, readWords, writeWords } from './address.ts';
import { BrokePage, Frame, NoPage } from './frame.tsx';
import { FindPage } from './screens/find/find-page.tsx';

const root = createRootRoute({ component: Frame, notFoundComponent: NoPage, errorComponent: BrokePage });
const under = { getParentRoute: () => root } as const;

/** Every state of a page stands in its address, so that a reload and a link come back to it. */
const tree = root.addChildren([
  createRoute({ ...under, path: '/', validateSearch: pickWords('words', 'bag', 'act', 'focus'), component: FindPage }),
  createRoute({
    ...under,
    path: '/begin',
    component: lazyRouteComponent(() => import('./screens/begin/begin-page.tsx'), 'BeginPage'),
  }),
  createRoute({
    ...under,
    path: '/drafts/$draft',
    validateSearch: pickWords('row', 'show'),
    component: lazyRouteComponent(() => import('./screens/draft/draft-page.tsx'), 'DraftPage'),
  }),
  createRoute({
    ...under,
    path: '/receive',
    validateSearch: pickWords('box', 'says', 'bag'),
    component: lazyRouteComponent(() => import('./screens/receive/receive-page.tsx'), 'ReceivePage'),
  }),
  createRoute({
    ...under,
    path: '/boards',
    validateSearch: pickWords('board'),
    component: lazyRouteComponent(() => import('./screens/boards/boards-page.tsx'), 'BoardsPage'),
  }),
  createRoute({
    ...under,
    path: '/boards/$board',
    validateSearch: pickWords('boards', 'revision', 'row', 'bag', 'show'),
    component: lazyRouteComponent(() => import('./screens/board/board-page.tsx'), 'BoardPage'),
  }),
  createRoute({
    ...under,
    path: '/kits',
    component: lazyRouteComponent(() => import('./screens/kits/kits-page.tsx'), 'KitsPage'),
  }),
  createRoute({
    ...under,
    path: '/kits/$build',
    validateSearch: pickWords('take', 'show', 'skipped'),
    component: lazyRouteComponent(() => import('./screens/kit/kit-page.tsx'), 'KitPage'),
  }),
  createRoute({
    ...under,
    path: '/kits/$build/pick',
    validateSearch: pickWords('take', 'skipped', 'show', 'hand'),
    component: lazyRouteComponent(() => import('./screens/kit-phone/kit-phone-page.tsx'), 'KitPhonePage'),
  }),
  createRoute({
    ...under,
    path: '/kits/$build/leftovers',
    component: lazyRouteComponent(() => import('./screens/leftovers/leftovers-page.tsx'), 'LeftoversPage'),
  }),
  createRoute({
    ...under,
    path: '/kits/$build/sheet',
    component: lazyRouteComponent(() => import('./screens/tray-sheet/tray-sheet-page.tsx'), 'TraySheetPage'),
  }),
  createRoute({
    ...under,
    path: '/boxes',
    validateSearch: pickWords('box'),
    component: lazyRouteComponent(() => import('./screens/boxes/boxes-page.tsx'), 'BoxesPage'),
  }),
  createRoute({
    ...under,
    path: '/stray',
    validateSearch: pickWords('look', 'bands', 'band', 'gap', 'old', 'mark', 'line'),
    component: lazyRouteComponent(() => import('./screens/stray/stray-page.tsx'), 'StrayPage'),
  }),
  createRoute({
    ...under,
    path: '/history',
    validateSearch: pickWords('shown'),
    component: lazyRouteComponent(() => import('./screens/history/history-page.tsx'), 'HistoryPage'),
  }),
  createRoute({
    ...under,
    path: '/devices',
    component: lazyRouteComponent(() => import('./screens/devices/devices-page.tsx'), 'DevicesPage'),
  }),
  createRoute({
    ...under,
    path: '/pair',
    validateSearch: pickWords('code'),
    component: lazyRouteComponent(() => import('./screens/pair/pair-page.tsx'), 'PairPage'),
  }),
  createRoute({
    ...under,
    path: '/keys',
    component: lazyRouteComponent(() => import('./screens/keys/keys-page.tsx'), 'KeysPage'),
  }),
]);

export const router = createRouter({
  routeTree: tree,
  parseSearch: readWords,
  stringifySearch: writeWords,
  scrollRestoration: true,
  defaultPreload: 'intent',
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
