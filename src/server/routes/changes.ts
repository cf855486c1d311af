import type { OpenAPIHono } from '@hono/zod-openapi';
import { createRoute, z } from '@hono/zod-openapi';
import { figures } from '#api/figures.ts';
import { PROBLEMS } from '#api/problem.ts';
import { isPaired } from '#db/devices.ts';
import { apiApp } from '../api-app.ts';
import { streamChanges } from '../changes.ts';
import { callerOf, type Served } from '../served.ts';

const getChanges = createRoute({
  method: 'get',
  path: '/api/changes',
  summary: 'Stream the numbers of changes, as server-sent events',
  request: {
    query: z.object({ since: figures(0).exactOptional() }),
    headers: z.object({ 'last-event-id': z.string().exactOptional() }),
  },
  responses: {
    200: {
      description: 'an event `change` with `{"change": n}` for the last number that was not seen, then for each new one',
      content: { 'text/event-stream': { schema: z.string() } },
    },
    ...PROBLEMS,
  },
});

export function changeRoutes({ lab, stopping }: Served): OpenAPIHono {
  const app = apiApp();
  app.openapi(getChanges, (c) => {
    const { device } = callerOf(c);
    const allowed = (): Promise<boolean> => (device ? lab.read((tx) => isPaired(tx, device.id)) : Promise.resolve(true));
    return streamChanges(c, lab, { stopping, allowed });
  });
  return app;
}
