import { createRoute, z, type OpenAPIHono } from '@hono/zod-openapi';
import { findBags } from '#actions/find-bags.ts';
import { bagInWords } from '#actions/part-words.ts';
import { bagPage, bagView, foundBag } from '#api/bag-answers.ts';
import { BagView, BagWithHistory, BoxView, FoundAnswer } from '#api/bags.ts';
import { PROBLEMS } from '#api/problem.ts';
import { readBagPage } from '#db/bag-page.ts';
import { sayPart } from '#say/en/said.ts';
import { apiApp } from '../api-app.ts';
import { json } from '../json.ts';
import { problem } from '../problem.ts';
import { CHANGE_HEADER, type Served } from '../served.ts';

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
  responses: { 200: { description: 'bags, the best first', content: json(FoundAnswer) }, ...PROBLEMS },
});

export function bagRoutes({ lab, stock }: Served): OpenAPIHono {
  const app = apiApp();
  app.openapi(getBags, async (c) => {
    const { bags, boxes, change } = (await stock.current()).stock();
    c.header(CHANGE_HEADER, String(change));
    return c.json({ bags: bags.map((bag) => bagView(bag, sayPart(bag.part))), boxes: boxes.map((box) => ({ ...box })) }, 200);
  });
  app.openapi(getBag, async (c) => {
    const { number } = c.req.valid('param');
    const page = await lab.read((tx) => readBagPage(tx, number));
    if (!page) return problem(c, 'no-such-bag', { bag: number });
    c.header(CHANGE_HEADER, String(page.change));
    return c.json(bagPage(page, bagInWords(page.bag.part)), 200);
  });
  app.openapi(getFind, async (c) => {
    const { words, limit } = c.req.valid('query');
    const now = await stock.current();
    c.header(CHANGE_HEADER, String(now.change));
    const { read, found } = findBags(now.index, words, limit);
    return c.json({ read: [...read], found: found.map((one) => foundBag(one, sayPart(one.bag.part))) }, 200);
  });
  return app;
}
