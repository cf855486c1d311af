import { createRoute, z, type OpenAPIHono } from '@hono/zod-openapi';
import { boardLines } from '#actions/board-lines.ts';
import { followReach } from '#actions/board-reach.ts';
import { choose } from '#actions/choose.ts';
import { fitLater } from '#actions/fit-later.ts';
import { lineDetail } from '#actions/line-detail.ts';
import { perform } from '#actions/perform.ts';
import { saveBoard } from '#actions/save-board.ts';
import {
  BoardLines,
  BoardReaches,
  BoardSaved,
  BoardView,
  ChoiceRequest,
  Chosen,
  LaterDone,
  LaterRequest,
  LineDetail,
} from '#api/boards.ts';
import { figures } from '#api/figures.ts';
import { BoardQuery, boardsWanted, fileBody } from '#api/files.ts';
import { PROBLEMS } from '#api/problem.ts';
import { readBoard, readBoards } from '#db/boards.ts';
import { readBuildsOfBoards } from '#db/read-builds.ts';
import { actRoute } from '../act-route.ts';
import { doneOf } from '../answer-act.ts';
import { apiApp } from '../api-app.ts';
import { boardLinesAnswer, boardViews, lineDetailAnswer } from '../board-answers.ts';
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

const revision = z.string().max(100).exactOptional().openapi({ description: 'the newest unless said' });

const getReach = createRoute({
  method: 'get',
  path: '/api/boards/reach',
  summary: 'How many of each board what is free makes, were nothing else built',
  responses: { 200: { description: 'every board alone', content: json(BoardReaches) }, ...PROBLEMS },
});

const getLines = createRoute({
  method: 'get',
  path: '/api/boards/{board}/lines',
  summary: 'The lines of a board against the bags, for so many boards, as if no other build were planned',
  request: { params: board, query: z.object({ boards: boardsWanted.default(1), revision }) },
  responses: { 200: { description: 'its lines', content: json(BoardLines) }, ...PROBLEMS },
});

const getLine = createRoute({
  method: 'get',
  path: '/api/boards/{board}/lines/{row}',
  summary: 'One line point by point against a bag, and the other bags that may answer it',
  request: {
    params: board.extend({ row: figures(1) }),
    query: z.object({
      revision,
      bag: figures(1).exactOptional().openapi({ description: 'the one that it would get unless said' }),
    }),
  },
  responses: { 200: { description: 'the line', content: json(LineDetail) }, ...PROBLEMS },
});

const postLater = actRoute({
  path: '/api/boards/{board}/later',
  summary: 'Leave the lines of a demand off for now, or fit them again',
  request: { params: board },
  body: LaterRequest,
  answer: LaterDone,
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
  const reach = followReach(lab, stock);
  app.openapi(getBoards, async (c) => {
    const { boards, builds } = await lab.read(async (tx) => ({
      boards: await readBoards(tx),
      builds: await readBuildsOfBoards(tx),
    }));
    return c.json({ boards: boardViews(boards, builds) }, 200);
  });
  app.openapi(getReach, async (c) => {
    const { change, boards } = await reach.current();
    c.header(CHANGE_HEADER, String(change));
    return c.json({ boards: boards.map((one) => ({ ...one, limitedBy: [...one.limitedBy] })) }, 200);
  });
  app.openapi(postBoard, async (c) => {
    const { name, id, board: named, revision: called } = c.req.valid('query');
    const read = await readUpload(c, name);
    if (!read.ok) return refusal(c, read.refusal);
    const input = {
      id,
      board: named ?? name.replace(/\.[^.]+$/, ''),
      source: name,
      lines: read.value.rows,
      ...(called !== undefined && { revision: called }),
    };
    const outcome = await perform(lab, saveBoard, clock, whoOf(c), input);
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { board: saved, revision: kept, lines, repeat } = outcome.value;
    const answer = { ...doneOf(c, outcome.value), board: saved, revision: kept, lines };
    return repeat ? c.json(answer, 200) : c.json(answer, 201);
  });
  app.openapi(getLines, async (c) => {
    const { board: name } = c.req.valid('param');
    const { boards, revision: wanted } = c.req.valid('query');
    const found = await lab.read((tx) => readBoard(tx, name, wanted));
    if (!found) return problem(c, 'no-such-board', { board: name });
    const lines = await boardLines(await stock.current(), found, boards);
    c.header(CHANGE_HEADER, String(lines.planned.change));
    return c.json(boardLinesAnswer(found, lines), 200);
  });
  app.openapi(getLine, async (c) => {
    const { board: name, row } = c.req.valid('param');
    const { revision: wanted, bag } = c.req.valid('query');
    const found = await lab.read((tx) => readBoard(tx, name, wanted));
    if (!found) return problem(c, 'no-such-board', { board: name });
    const now = await stock.current();
    const detail = lineDetail(now, found, row, bag);
    if (!detail.ok) return refusal(c, detail.refusal);
    c.header(CHANGE_HEADER, String(now.change));
    return c.json(lineDetailAnswer(detail.value), 200);
  });
  app.openapi(postLater, async (c) => {
    const outcome = await perform(lab, fitLater, clock, whoOf(c), { ...c.req.valid('json'), ...c.req.valid('param') });
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { board: of, demand, later, repeat } = outcome.value;
    const answer = { ...doneOf(c, outcome.value), board: of, demand, later };
    return repeat ? c.json(answer, 200) : c.json(answer, 201);
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
