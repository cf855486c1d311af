import { createRoute, type OpenAPIHono } from '@hono/zod-openapi';
import { arrangeBoxes } from '#actions/arrange-boxes.ts';
import { perform } from '#actions/perform.ts';
import { showBoxes } from '#actions/show-boxes.ts';
import { ArrangeRequest, Arranged, BoxesView } from '#api/bags.ts';
import { PROBLEMS } from '#api/problem.ts';
import { actRoute } from '../act-route.ts';
import { doneOf } from '../answer-act.ts';
import { apiApp } from '../api-app.ts';
import { json } from '../json.ts';
import { refusal } from '../problem.ts';
import { CHANGE_HEADER, whoOf, type Served } from '../served.ts';

const getBoxes = createRoute({
  method: 'get',
  path: '/api/boxes',
  summary: 'The boxes as they stand, with their bags front to back',
  responses: { 200: { description: 'boxes and loose bags', content: json(BoxesView) }, ...PROBLEMS },
});

const postOrder = actRoute({
  path: '/api/boxes/order',
  summary: 'Put the boxes into the order in which they stand',
  request: {},
  body: ArrangeRequest,
  answer: Arranged,
});

export function boxRoutes({ lab, stock, clock }: Served): OpenAPIHono {
  const app = apiApp();
  app.openapi(getBoxes, async (c) => {
    const now = await stock.current();
    const { boxes, loose } = showBoxes(now.stock());
    c.header(CHANGE_HEADER, String(now.change));
    return c.json({ boxes: boxes.map((box) => ({ ...box, bags: [...box.bags] })), loose: [...loose] }, 200);
  });
  app.openapi(postOrder, async (c) => {
    const outcome = await perform(lab, arrangeBoxes, clock, whoOf(c), c.req.valid('json'));
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { repeat, boxes } = outcome.value;
    const arranged = { ...doneOf(c, outcome.value), boxes: boxes.map((box) => ({ ...box })) };
    return repeat ? c.json(arranged, 200) : c.json(arranged, 201);
  });
  return app;
}
