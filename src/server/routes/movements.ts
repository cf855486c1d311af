import { createRoute, type OpenAPIHono } from '@hono/zod-openapi';
import { Movement, MovementRequest, Undone, UndoRequest } from '#api/movements.ts';
import { PROBLEMS } from '#api/problem.ts';
import { perform } from '#actions/perform.ts';
import { undo } from '#actions/undo.ts';
import { apiApp } from '../api-app.ts';
import { json } from '../json.ts';
import { moveBag } from '../move-bag.ts';
import { refusal } from '../problem.ts';
import { CHANGE_HEADER, whoOf, type Served } from '../served.ts';
import { warned } from '../warned.ts';

const postMovement = createRoute({
  method: 'post',
  path: '/api/movements',
  summary: 'Book one movement of one bag',
  request: { body: { required: true, content: json(MovementRequest) } },
  responses: {
    201: { description: 'booked', content: json(Movement) },
    200: { description: 'the same id had come before: the same movement, counted once', content: json(Movement) },
    ...PROBLEMS,
  },
});

const postUndo = createRoute({
  method: 'post',
  path: '/api/undo',
  summary: 'Take an act back, once',
  request: { body: { required: true, content: json(UndoRequest) } },
  responses: {
    201: { description: 'taken back', content: json(Undone) },
    200: { description: 'the same id had come before', content: json(Undone) },
    ...PROBLEMS,
  },
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
    const { act, undoes, kind, bags, warnings, change, repeat } = outcome.value;
    c.header(CHANGE_HEADER, String(change));
    const undone = { id: act, undoes, kind, bags: bags.map((bag) => ({ ...bag })), warnings: warnings.map(warned), change };
    return repeat ? c.json(undone, 200) : c.json(undone, 201);
  });
  return app;
}
