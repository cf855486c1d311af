import { createRoute, z, type OpenAPIHono } from '@hono/zod-openapi';
import type { Who } from '#actions/action.ts';
import type { PlanBuildInput } from '#actions/inputs.ts';
import { perform } from '#actions/perform.ts';
import { planBuild } from '#actions/plan-build.ts';
import { planAsked, planOpen } from '#actions/plan-open.ts';
import { reserveBom } from '#actions/reserve-bom.ts';
import { savedBom } from '#actions/saved-bom.ts';
import { kitAnswer, plannedKit } from '#api/kit-answers.ts';
import { BuildView, KitAnswer, KitRequest, KitView, PlannedKit, ReservedKit } from '#api/kits.ts';
import { PROBLEMS } from '#api/problem.ts';
import { readBuilds } from '#db/read-builds.ts';
import { sayBecause } from '#say/en/because.ts';
import { doneOf } from '../answer-act.ts';
import { apiApp } from '../api-app.ts';
import { json } from '../json.ts';
import { kitView } from '../kit-view.ts';
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
  summary: 'One build with its walk, its trays, its lines and what was done with it',
  request: { params: z.object({ build: z.string().max(200) }) },
  responses: { 200: { description: 'the kit, its takes in the order of the walk', content: json(KitView) }, ...PROBLEMS },
});

const postKit = createRoute({
  method: 'post',
  path: '/api/kits',
  summary: 'Plan a kit for a saved board beside all planned builds; `keep` keeps it as planned, `reserve` promises its bags',
  request: { body: { required: true, content: json(KitRequest) } },
  responses: {
    200: {
      description: 'the plan, nothing written; or a kit that the same id had reserved or kept before',
      content: json(z.union([ReservedKit, KitAnswer])),
    },
    201: { description: 'reserved, or kept as planned', content: json(ReservedKit) },
    ...PROBLEMS,
  },
});

const getPlan = createRoute({
  method: 'get',
  path: '/api/plan',
  summary: 'What every planned build gets, the first served first; nothing is written',
  responses: { 200: { description: 'the plan', content: json(z.object({ builds: z.array(PlannedKit) })) }, ...PROBLEMS },
});

export function kitRoutes(served: Served): OpenAPIHono {
  const { lab, stock, clock } = served;
  const app = apiApp();
  app.openapi(getKits, async (c) => c.json({ builds: await lab.read(readBuilds) }, 200));
  app.openapi(getKit, async (c) => {
    const { build } = c.req.valid('param');
    const kit = await kitView(served, build);
    return kit ? c.json(kit, 200) : problem(c, 'no-such-build', { build });
  });
  app.openapi(getPlan, async (c) => {
    const { all } = await planOpen(lab, stock, [], { spares: true });
    return c.json({ builds: all.map((one) => plannedKit(one, all, sayBecause)) }, 200);
  });
  app.openapi(postKit, async (c) => {
    const { reserve, keep, id, board, revision, spares, ...told } = c.req.valid('json');
    const of = { board, ...(revision !== undefined && { revision }) };
    const find = () => savedBom(lab, of);
    if (!reserve && !keep) {
      const found = await find();
      if (!found.ok) return refusal(c, found.refusal);
      const { planned, all } = await planAsked(lab, stock, { ...found.value, ...told }, { spares });
      c.header(CHANGE_HEADER, String(planned.change));
      return c.json(kitAnswer(planned, all, sayBecause), 200);
    }
    if (reserve && keep) return problem(c, 'wire-field', { field: 'keep', expected: 'left out where `reserve` is set' });
    if (id === undefined)
      return problem(c, 'wire-field', { field: 'id', expected: 'a UUID of yours, by which a repeat is known' });
    const outcome = reserve
      ? await reserveBom(lab, stock, clock, whoOf(c), { ...told, id, of, spares }, find)
      : await keepBuild(served, whoOf(c), { ...told, id, ...of }, spares);
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { planned, all, result } = outcome.value;
    const build = 'build' in result ? result.build : (result.builds[0]?.build ?? '');
    const answer = { ...kitAnswer(planned, all, sayBecause), ...doneOf(c, result), build };
    return result.repeat ? c.json(answer, 200) : c.json(answer, 201);
  });
  return app;
}

/** Keeps a build as planned, and says what it gets now; a repeat whose build went on is answered as if it were asked anew. */
async function keepBuild({ lab, stock, clock }: Served, who: Who, input: PlanBuildInput, spares: boolean) {
  const outcome = await perform(lab, planBuild, clock, who, input);
  if (!outcome.ok) return outcome;
  const result = outcome.value;
  const { all } = await planOpen(lab, stock, [], { spares });
  const planned = all.find(({ open }) => open.key === result.build);
  if (planned) return { ok: true as const, value: { planned, all, result } };
  const found = await savedBom(lab, result);
  if (!found.ok) return found;
  return { ok: true as const, value: { ...(await planAsked(lab, stock, { ...found.value, ...input }, { spares })), result } };
}
