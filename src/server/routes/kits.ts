import { createRoute, z, type OpenAPIHono } from '@hono/zod-openapi';
import { expectedLeftovers } from '#actions/expected-leftovers.ts';
import { planBom } from '#actions/plan-bom.ts';
import { reserveBom } from '#actions/reserve-bom.ts';
import { BuildView, KitAnswer, kitAnswer, KitRequest, KitView, ReservedKit } from '#api/kits.ts';
import { PROBLEMS } from '#api/problem.ts';
import { readBoard } from '#db/boards.ts';
import { readBuilds, readKit } from '#db/read-builds.ts';
import { sayBecause } from '#say/en/because.ts';
import { doneOf } from '../answer-act.ts';
import { apiApp } from '../api-app.ts';
import { json } from '../json.ts';
import { problem, refusal } from '../problem.ts';
import { CHANGE_HEADER, whoOf, type Served } from '../served.ts';

const getKits = createRoute({
  method: 'get',
  path: '/api/kits',
  summary: 'The builds, those under way first',
  responses: { 200: { description: 'builds', content: json(z.object({ builds: z.array(BuildView) })) }, ...PROBLEMS },
});

const getKit = createRoute({
  method: 'get',
  path: '/api/kits/{build}',
  summary: 'One build with its walk and trays',
  request: { params: z.object({ build: z.guid() }) },
  responses: { 200: { description: 'the kit, its takes in the order of the walk', content: json(KitView) }, ...PROBLEMS },
});

const postKit = createRoute({
  method: 'post',
  path: '/api/kits',
  summary: 'Plan a kit for a saved board; with `reserve` its bags are promised',
  request: { body: { required: true, content: json(KitRequest) } },
  responses: {
    200: {
      description: 'the plan, nothing written; or a kit that the same id had reserved before',
      content: json(z.union([ReservedKit, KitAnswer])),
    },
    201: { description: 'reserved', content: json(ReservedKit) },
    ...PROBLEMS,
  },
});

export function kitRoutes({ lab, stock, clock }: Served): OpenAPIHono {
  const app = apiApp();
  app.openapi(getKits, async (c) => c.json({ builds: await lab.read(readBuilds) }, 200));
  app.openapi(getKit, async (c) => {
    const { build } = c.req.valid('param');
    const kit = await lab.read((tx) => readKit(tx, build));
    if (!kit) return problem(c, 'no-such-build', { build });
    const takes = expectedLeftovers(kit).map(({ take, expected }) => ({ ...take, refs: [...take.refs], expected }));
    return c.json({ build: kit.build, takes }, 200);
  });
  app.openapi(postKit, async (c) => {
    const { board: name, revision: wanted, boards, spares, reserve, id, ...told } = c.req.valid('json');
    const found = await lab.read((tx) => readBoard(tx, name, wanted));
    if (!found) return problem(c, 'no-such-board', { board: name });
    const bom = { rows: found.lines, choices: found.choices };
    if (!reserve) {
      const planned = await planBom(await stock.current(), bom, boards, { spares });
      c.header(CHANGE_HEADER, String(planned.change));
      return c.json(kitAnswer(planned, sayBecause), 200);
    }
    if (id === undefined)
      return problem(c, 'wire-field', { field: 'id', expected: 'a UUID of yours, by which a repeat is known' });
    const asked = { name, ...told, id, bom, boards, spares, board: found.board.name, revision: found.revision.name };
    const outcome = await reserveBom(lab, stock, clock, whoOf(c), asked);
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { planned, result } = outcome.value;
    const answer = { ...kitAnswer(planned, sayBecause), ...doneOf(c, result), build: result.builds[0]?.build ?? '' };
    return result.repeat ? c.json(answer, 200) : c.json(answer, 201);
  });
  return app;
}
