import { createRoute, z, type OpenAPIHono } from '@hono/zod-openapi';
import { findBags } from '#actions/find-bags.ts';
import { BagView, BagWithHistory, bagView, BoxView, FoundBag, foundBag } from '#api/bags.ts';
import { PROBLEMS } from '#api/problem.ts';
import { readBagHistory } from '#db/history.ts';
import { apiApp } from '../api-app.ts';
import { atChange } from '../fresh.ts';
import { json } from '../json.ts';
import { problem } from '../problem.ts';
import type { Served } from '../served.ts';

const getBags = createRoute({
  method: 'get',
  path: '/api/bags',
  summary: 'All bags, by number',
  responses: {
    200: { description: 'bags and boxes', content: json(z.object({ bags: z.array(BagView), boxes: z.array(BoxView) })) },
    ...PROBLEMS,
  },
});

const getBag = createRoute({
  method: 'get',
  path: '/api/bags/{number}',
  summary: 'One bag with its movements',
  request: { params: z.object({ number: z.coerce.number().int().positive().openapi({ example: 12 }) }) },
  responses: { 200: { description: 'the bag', content: json(BagWithHistory) }, ...PROBLEMS },
});

const getFind = createRoute({
  method: 'get',
  path: '/api/find',
  summary: 'Find bags by words, values, sizes, part numbers',
  request: { query: z.object({ words: z.string().max(500), limit: z.coerce.number().int().min(1).max(1000).default(50) }) },
  responses: { 200: { description: 'bags, the best first', content: json(z.object({ found: z.array(FoundBag) })) }, ...PROBLEMS },
});

export function bagRoutes({ lab, stock }: Served): OpenAPIHono {
  const app = apiApp();
  app.openapi(getBags, async (c) => {
    const now = await stock.current();
    const { bags, boxes, change } = now.stock();
    return atChange(c, change) ?? c.json({ bags: bags.map(bagView), boxes: boxes.map((box) => ({ ...box })) }, 200);
  });
  app.openapi(getBag, async (c) => {
    const { number } = c.req.valid('param');
    const now = await stock.current();
    const bag = now.bag(number);
    if (!bag) return problem(c, 'no-such-bag', { bag: number });
    const movements = await lab.read((tx) => readBagHistory(tx, number));
    return atChange(c, now.change) ?? c.json({ ...bagView(bag), movements }, 200);
  });
  app.openapi(getFind, async (c) => {
    const { words, limit } = c.req.valid('query');
    const now = await stock.current();
    return atChange(c, now.change) ?? c.json({ found: findBags(now.index, words, limit).map(foundBag) }, 200);
  });
  return app;
}
