import { createRoute, z, type OpenAPIHono } from '@hono/zod-openapi';
import { choose } from '#actions/choose.ts';
import { perform } from '#actions/perform.ts';
import { planBom } from '#actions/plan-bom.ts';
import { saveBoard } from '#actions/save-board.ts';
import { BoardSaved, BoardView, ChoiceRequest, Chosen } from '#api/boards.ts';
import { BoardQuery, boardsWanted, fileBody } from '#api/files.ts';
import { lineAnswer } from '#api/kit-answers.ts';
import { BoardLine } from '#api/kits.ts';
import { PROBLEMS } from '#api/problem.ts';
import { readBoard, readBoards } from '#db/boards.ts';
import { sayBecause } from '#say/en/because.ts';
import { actRoute } from '../act-route.ts';
import { doneOf } from '../answer-act.ts';
import { apiApp } from '../api-app.ts';
import { json } from '../json.ts';
import { problem, refusal } from '../problem.ts';
import { CHANGE_HEADER, whoOf, type Served } from '../served.ts';
import { readUpload } from '../upload.ts';

const board = z.object({ board: z.string().min(1).max(200) });

const getBoards = createRoute({
  method: 'get',
  path: '/api/boards',
  summary: 'The boards that the lab keeps',
  responses: { 200: { description: 'boards by name', content: json(z.object({ boards: z.array(BoardView) })) }, ...PROBLEMS },
});

const postBoard = createRoute({
  method: 'post',
  path: '/api/boards',
  summary: 'Keep a BOM as a board, or as the next revision of one',
  request: { query: BoardQuery, body: fileBody },
  responses: {
    201: { description: 'kept', content: json(BoardSaved) },
    200: { description: 'the same id had come before', content: json(BoardSaved) },
    ...PROBLEMS,
  },
});

const getLines = createRoute({
  method: 'get',
  path: '/api/boards/{board}/lines',
  summary: 'The lines of a board against the bags',
  request: { params: board, query: z.object({ boards: boardsWanted.default(1), revision: z.string().exactOptional() }) },
  responses: {
    200: { description: 'its lines', content: json(z.object({ revision: z.string(), lines: z.array(BoardLine) })) },
    ...PROBLEMS,
  },
});

const postChoice = actRoute({
  path: '/api/boards/{board}/choices',
  summary: 'Take a bag by hand for a demand of a board',
  request: { params: board },
  body: ChoiceRequest,
  answer: Chosen,
});

export function boardRoutes({ lab, stock, clock }: Served): OpenAPIHono {
  const app = apiApp();
  app.openapi(getBoards, async (c) => {
    const boards = await lab.read(readBoards);
    return c.json({ boards: boards.map(({ id, name, revisions }) => ({ id, name, revisions: [...revisions] })) }, 200);
  });
  app.openapi(postBoard, async (c) => {
    const { name, id, board: named, revision } = c.req.valid('query');
    const read = await readUpload(c, name);
    if (!read.ok) return refusal(c, read.refusal);
    const input = {
      id,
      board: named ?? name.replace(/\.[^.]+$/, ''),
      source: name,
      lines: read.value.rows,
      ...(revision !== undefined && { revision }),
    };
    const outcome = await perform(lab, saveBoard, clock, whoOf(c), input);
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { board: saved, revision: kept, lines, repeat } = outcome.value;
    const answer = { ...doneOf(c, outcome.value), board: saved, revision: kept, lines };
    return repeat ? c.json(answer, 200) : c.json(answer, 201);
  });
  app.openapi(getLines, async (c) => {
    const { board: name } = c.req.valid('param');
    const { boards, revision } = c.req.valid('query');
    const found = await lab.read((tx) => readBoard(tx, name, revision));
    if (!found) return problem(c, 'no-such-board', { board: name });
    const planned = await planBom(await stock.current(), { rows: found.lines, choices: found.choices }, boards, {
      spares: false,
    });
    c.header(CHANGE_HEADER, String(planned.change));
    const lines = planned.lines.map((line) => ({ ...lineAnswer(line, sayBecause), demand: line.demand }));
    return c.json({ revision: found.revision.name, lines }, 200);
  });
  app.openapi(postChoice, async (c) => {
    const outcome = await perform(lab, choose, clock, whoOf(c), { ...c.req.valid('json'), ...c.req.valid('param') });
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { board: of, demand, bag, accept, repeat } = outcome.value;
    const answer = { ...doneOf(c, outcome.value), board: of, demand, bag, accept };
    return repeat ? c.json(answer, 200) : c.json(answer, 201);
  });
  return app;
}
