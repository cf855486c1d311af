import { createRoute, z, type OpenAPIHono } from '@hono/zod-openapi';
import { perform } from '#actions/perform.ts';
import { undo } from '#actions/undo.ts';
import { ActView } from '#api/acts.ts';
import { figures } from '#api/figures.ts';
import { Movement, MovementRequest, Undone, UndoRequest } from '#api/movements.ts';
import { PROBLEMS } from '#api/problem.ts';
import { readActs } from '#db/history.ts';
import { actRoute } from '../act-route.ts';
import { doneOf } from '../answer-act.ts';
import { apiApp } from '../api-app.ts';
import { json } from '../json.ts';
import { moveBag } from '../move-bag.ts';
import { refusal } from '../problem.ts';
import { CHANGE_HEADER, whoOf, type Served } from '../served.ts';

const postMovement = actRoute({
  path: '/api/movements',
  summary: 'Book one movement of one bag',
  request: {},
  body: MovementRequest,
  answer: Movement,
});

const postUndo = actRoute({
  path: '/api/undo',
  summary: 'Take an act back, once',
  request: {},
  body: UndoRequest,
  answer: Undone,
});

const getActs = createRoute({
  method: 'get',
  path: '/api/acts',
  summary: 'What was done, the newest first',
  request: {
    query: z.object({
      limit: figures(1, 1000).default(50),
      before: figures(0).exactOptional().openapi({ description: 'go on after this change number' }),
    }),
  },
  responses: { 200: { description: 'acts', content: json(z.object({ acts: z.array(ActView) })) }, ...PROBLEMS },
});

export function movementRoutes({ lab, clock }: Served): OpenAPIHono {
  const app = apiApp();
  app.openapi(postMovement, async (c) => {
    const outcome = await moveBag(lab, clock, whoOf(c), c.req.valid('json'));
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { repeat, movement } = outcome.value;
    c.header(CHANGE_HEADER, String(movement.change));
    return repeat ? c.json(movement, 200) : c.json(movement, 201);
  });
  app.openapi(postUndo, async (c) => {
    const outcome = await perform(lab, undo, clock, whoOf(c), c.req.valid('json'));
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { undoes, kind, bags, repeat } = outcome.value;
    const undone = { ...doneOf(c, outcome.value), undoes, kind, bags: [...bags] };
    return repeat ? c.json(undone, 200) : c.json(undone, 201);
  });
  app.openapi(getActs, async (c) => {
    const acts = await lab.read((tx) => readActs(tx, c.req.valid('query')));
    return c.json({ acts: acts.map((act) => ({ ...act, bags: [...act.bags] })) }, 200);
  });
  return app;
}
