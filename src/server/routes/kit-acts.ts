import { z, type OpenAPIHono } from '@hono/zod-openapi';
import { cancelBuild } from '#actions/cancel-build.ts';
import { finishBuild } from '#actions/finish-build.ts';
import { perform } from '#actions/perform.ts';
import { pickForBuild } from '#actions/pick-for-build.ts';
import { reservePlanned } from '#actions/reserve-planned.ts';
import { returnLeftovers } from '#actions/return-leftovers.ts';
import {
  CancelRequest,
  FinishedKit,
  FinishRequest,
  LeftoversRequest,
  PickedKit,
  PickKitRequest,
  ReservedBuild,
  ReserveRequest,
  ReturnedKit,
} from '#api/kits.ts';
import { actRoute } from '../act-route.ts';
import { doneOf } from '../answer-act.ts';
import { apiApp } from '../api-app.ts';
import { refusal } from '../problem.ts';
import { whoOf, type Served } from '../served.ts';

const request = { params: z.object({ build: z.string().max(200) }) };

const postReserve = actRoute({
  path: '/api/kits/{build}/reserve',
  summary: 'Promise a planned build what it gets beside the others',
  request,
  body: ReserveRequest,
  answer: ReservedBuild,
});
const postPicks = actRoute({
  path: '/api/kits/{build}/picks',
  summary: 'Pick a kit, whole or stop by stop',
  request,
  body: PickKitRequest,
  answer: PickedKit,
});
const postLeftovers = actRoute({
  path: '/api/kits/{build}/leftovers',
  summary: 'Return what is left in the trays',
  request,
  body: LeftoversRequest,
  answer: ReturnedKit,
});
const postFinish = actRoute({
  path: '/api/kits/{build}/finish',
  summary: 'The boards are soldered',
  request,
  body: FinishRequest,
  answer: FinishedKit,
});
const postCancel = actRoute({
  path: '/api/kits/{build}/cancel',
  summary: 'Give the build up',
  request,
  body: CancelRequest,
  answer: ReturnedKit,
});

export function kitActRoutes({ lab, stock, clock }: Served): OpenAPIHono {
  const app = apiApp();
  app.openapi(postReserve, async (c) => {
    const outcome = await reservePlanned(lab, stock, clock, whoOf(c), { ...c.req.valid('json'), ...c.req.valid('param') });
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { bags, repeat } = outcome.value.result;
    const answer = { ...doneOf(c, outcome.value.result), ...c.req.valid('param'), bags: [...bags] };
    return repeat ? c.json(answer, 200) : c.json(answer, 201);
  });
  app.openapi(postPicks, async (c) => {
    const outcome = await perform(lab, pickForBuild, clock, whoOf(c), { ...c.req.valid('json'), ...c.req.valid('param') });
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { picked, open, bags, repeat } = outcome.value;
    const answer = { ...doneOf(c, outcome.value), picked, open, bags: [...bags] };
    return repeat ? c.json(answer, 200) : c.json(answer, 201);
  });
  app.openapi(postLeftovers, async (c) => {
    const outcome = await perform(lab, returnLeftovers, clock, whoOf(c), { ...c.req.valid('json'), ...c.req.valid('param') });
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { returned, bags, repeat } = outcome.value;
    const answer = { ...doneOf(c, outcome.value), returned, bags: [...bags] };
    return repeat ? c.json(answer, 200) : c.json(answer, 201);
  });
  app.openapi(postFinish, async (c) => {
    const outcome = await perform(lab, finishBuild, clock, whoOf(c), { ...c.req.valid('json'), ...c.req.valid('param') });
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { made, repeat } = outcome.value;
    const answer = { ...doneOf(c, outcome.value), made };
    return repeat ? c.json(answer, 200) : c.json(answer, 201);
  });
  app.openapi(postCancel, async (c) => {
    const outcome = await perform(lab, cancelBuild, clock, whoOf(c), { ...c.req.valid('json'), ...c.req.valid('param') });
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { returned, bags, repeat } = outcome.value;
    const answer = { ...doneOf(c, outcome.value), returned, bags: [...bags] };
    return repeat ? c.json(answer, 200) : c.json(answer, 201);
  });
  return app;
}
