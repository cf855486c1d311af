import { createRoute, type OpenAPIHono } from '@hono/zod-openapi';
import { showBoxes } from '#actions/show-boxes.ts';
import { BoxesView } from '#api/bags.ts';
import { PROBLEMS } from '#api/problem.ts';
import { apiApp } from '../api-app.ts';
import { json } from '../json.ts';
import { CHANGE_HEADER, type Served } from '../served.ts';

const getBoxes = createRoute({
  method: 'get',
  path: '/api/boxes',
  summary: 'The boxes as they stand, with their bags front to back',
  responses: { 200: { description: 'boxes and loose bags', content: json(BoxesView) }, ...PROBLEMS },
});

export function boxRoutes({ stock }: Served): OpenAPIHono {
  const app = apiApp();
  app.openapi(getBoxes, async (c) => {
    const now = await stock.current();
    const { boxes, loose } = showBoxes(now.stock());
    c.header(CHANGE_HEADER, String(now.change));
    return c.json({ boxes: boxes.map((box) => ({ ...box, bags: [...box.bags] })), loose: [...loose] }, 200);
  });
  return app;
}
