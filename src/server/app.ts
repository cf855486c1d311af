import type { OpenAPIHono } from '@hono/zod-openapi';
import { compress } from 'hono/compress';
import { apiApp } from './api-app.ts';
import { changeNumber } from './fresh.ts';
import { addressGuard, hostGuard, originGuard, securityHeaders, sizeGuard } from './guard.ts';
import { pages } from './pages.ts';
import { methodGuard } from './method-guard.ts';
import { onError, problem } from './problem.ts';
import { bagRoutes } from './routes/bags.ts';
import { boxRoutes } from './routes/boxes.ts';
import { boardRoutes } from './routes/boards.ts';
import { changeRoutes } from './routes/changes.ts';
import { deviceRoutes } from './routes/devices.ts';
import { draftRoutes } from './routes/drafts.ts';
import { fileRoutes } from './routes/files.ts';
import { kitActRoutes } from './routes/kit-acts.ts';
import { kitRoutes } from './routes/kits.ts';
import { labRoutes } from './routes/lab.ts';
import { movementRoutes } from './routes/movements.ts';
import type { Served } from './served.ts';
import { thisLab } from './this-lab.ts';
import { trustGuard } from './trust.ts';

const ROUTES = [
  movementRoutes,
  bagRoutes,
  boxRoutes,
  fileRoutes,
  boardRoutes,
  draftRoutes,
  kitRoutes,
  kitActRoutes,
  changeRoutes,
  labRoutes,
  deviceRoutes,
];

/** The whole web side of a lab, as one function from request to answer. */
export function createApp(served: Served, pagesFolder: string): OpenAPIHono {
  const app = apiApp();
  app.use(securityHeaders, hostGuard(served.network), trustGuard(served), addressGuard, methodGuard(app), originGuard, sizeGuard);
  app.use('/api/*', compress());
  app.use('/api/*', thisLab(served.lab), changeNumber(served.lab));
  for (const routes of ROUTES) app.route('/', routes(served));
  app.doc31('/api/openapi.json', {
    openapi: '3.1.0',
    info: {
      title: 'Bagatelle',
      version: '1',
      description: 'The consumables of a small electronics lab. Quantities are whole numbers in the unit of the bag.',
    },
  });
  app.use(pages(pagesFolder));
  app.notFound((c) => problem(c, 'wire-no-such-page', { path: c.req.path }));
  app.onError(onError);
  return app;
}
