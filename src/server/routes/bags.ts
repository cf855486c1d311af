import { createRoute, z, type OpenAPIHono } from '@hono/zod-openapi';
import { findBags } from '#actions/find-bags.ts';
import { bagInWords, readInWords } from '#actions/part-words.ts';
import { takeIn } from '#actions/take-in.ts';
import { touchedBags } from '#actions/touched-bags.ts';
import { bagPage, bagView, foundBag, partReading } from '#api/bag-answers.ts';
import { BagView, BagWithHistory, BoxView, FoundAnswer, NewBag, NewBagRequest, PartReading } from '#api/bags.ts';
import { figures } from '#api/figures.ts';
import { PROBLEMS } from '#api/problem.ts';
import { readBagPage } from '#db/bag-page.ts';
import { sayPart } from '#say/en/said.ts';
import { actRoute } from '../act-route.ts';
import { doneOf } from '../answer-act.ts';
import { apiApp } from '../api-app.ts';
import { json } from '../json.ts';
import { problem, refusal } from '../problem.ts';
import { CHANGE_HEADER, whoOf, type Served } from '../served.ts';

const getBags = createRoute({
  method: 'get',
  path: '/api/bags',
  summary: 'All bags, by number',
  responses: {
    200: { description: 'bags and boxes', content: json(z.object({ bags: z.array(BagView), boxes: z.array(BoxView) })) },
    ...PROBLEMS,
  },
});

const getTouched = createRoute({
  method: 'get',
  path: '/api/bags/touched',
  summary: 'The bags touched last, the newest first',
  request: { query: z.object({ limit: figures(1, 100).default(6) }) },
  responses: { 200: { description: 'bags', content: json(z.object({ bags: z.array(BagView) })) }, ...PROBLEMS },
});

const getBag = createRoute({
  method: 'get',
  path: '/api/bags/{number}',
  summary: 'One bag with its movements',
  request: { params: z.object({ number: figures(1).openapi({ example: 12 }) }) },
  responses: { 200: { description: 'the bag', content: json(BagWithHistory) }, ...PROBLEMS },
});

const getFind = createRoute({
  method: 'get',
  path: '/api/find',
  summary: 'Find bags by words, values, sizes, part numbers',
  request: { query: z.object({ words: z.string().max(500), limit: figures(1, 1000).default(50) }) },
  responses: { 200: { description: 'bags, the best first', content: json(FoundAnswer) }, ...PROBLEMS },
});

const postBag = actRoute({
  path: '/api/bags',
  summary: 'Take a bag in: what it says in any notation, how many, and where it goes',
  request: {},
  body: NewBagRequest,
  answer: NewBag,
});

const getReading = createRoute({
  method: 'get',
  path: '/api/read-part',
  summary: 'How a text is read as a part; nothing is kept',
  request: { query: z.object({ says: z.string().trim().min(1).max(1000).openapi({ example: '4k7 1% 0805' }) }) },
  responses: { 200: { description: 'the reading', content: json(PartReading) }, ...PROBLEMS },
});

export function bagRoutes({ lab, stock, clock }: Served): OpenAPIHono {
  const app = apiApp();
  app.openapi(getBags, async (c) => {
    const { bags, boxes, change } = (await stock.current()).stock();
    c.header(CHANGE_HEADER, String(change));
    return c.json({ bags: bags.map((bag) => bagView(bag, sayPart(bag.part))), boxes: boxes.map((box) => ({ ...box })) }, 200);
  });
  app.openapi(getTouched, async (c) => {
    const { bags, change } = await touchedBags(lab, stock, c.req.valid('query').limit);
    c.header(CHANGE_HEADER, String(change));
    return c.json({ bags: bags.map((bag) => bagView(bag, sayPart(bag.part))) }, 200);
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
    return c.json({ words, read: [...read], found: found.map((one) => foundBag(one, sayPart(one.bag.part))) }, 200);
  });
  app.openapi(postBag, async (c) => {
    const outcome = await takeIn(lab, clock, whoOf(c), c.req.valid('json'));
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { result, balance, box, code, said } = outcome.value;
    const taken = { ...doneOf(c, result), bag: balance.bag, box, code, said: { ...said }, onHand: balance.onHand };
    return result.repeat ? c.json(taken, 200) : c.json(taken, 201);
  });
  app.openapi(getReading, (c) => c.json(partReading(readInWords(c.req.valid('query').says)), 200));
  return app;
}
