import { createRoute, z, type OpenAPIHono } from '@hono/zod-openapi';
import { previewImport, importList } from '#actions/import-list.ts';
import { perform } from '#actions/perform.ts';
import { planBom } from '#actions/plan-bom.ts';
import { planAsked } from '#actions/plan-open.ts';
import { tellRow } from '#actions/tell-row.ts';
import {
  FileQuery,
  fileBody,
  Imported,
  ImportPreview,
  ImportQuery,
  KitFileQuery,
  MatchQuery,
  plannedBag,
  ReadRowView,
} from '#api/files.ts';
import { kitAnswer, lineAnswer } from '#api/kit-answers.ts';
import { KitAnswer, LineAnswer } from '#api/kits.ts';
import { PROBLEMS } from '#api/problem.ts';
import { sayBecause } from '#say/en/because.ts';
import { doneOf } from '../answer-act.ts';
import { apiApp } from '../api-app.ts';
import { json } from '../json.ts';
import { problem, refusal } from '../problem.ts';
import { CHANGE_HEADER, whoOf, type Served } from '../served.ts';
import { readUpload } from '../upload.ts';

const postRead = createRoute({
  method: 'post',
  path: '/api/read',
  summary: 'Show how a BOM or a stock list is read; nothing is kept',
  request: { query: FileQuery, body: fileBody },
  responses: { 200: { description: 'its rows', content: json(z.object({ rows: z.array(ReadRowView) })) }, ...PROBLEMS },
});

const postImport = createRoute({
  method: 'post',
  path: '/api/imports',
  summary: 'Make bags from a stock list, or show what would be made',
  request: { query: ImportQuery, body: fileBody },
  responses: {
    200: { description: 'a dry run: what would be made', content: json(z.union([ImportPreview, Imported])) },
    201: { description: 'made', content: json(Imported) },
    ...PROBLEMS,
  },
});

const postMatch = createRoute({
  method: 'post',
  path: '/api/match',
  summary: 'Put a BOM against the bags',
  request: { query: MatchQuery, body: fileBody },
  responses: { 200: { description: 'its lines', content: json(z.object({ lines: z.array(LineAnswer) })) }, ...PROBLEMS },
});

const postKitFile = createRoute({
  method: 'post',
  path: '/api/kits/of-file',
  summary: 'Plan a kit from a BOM that is not kept; nothing is written',
  request: { query: KitFileQuery, body: fileBody },
  responses: { 200: { description: 'the plan', content: json(KitAnswer) }, ...PROBLEMS },
});

export function fileRoutes({ lab, stock, clock }: Served): OpenAPIHono {
  const app = apiApp();
  app.openapi(postRead, async (c) => {
    const read = await readUpload(c, c.req.valid('query').name);
    return read.ok ? c.json({ rows: read.value.rows.map(tellRow) }, 200) : refusal(c, read.refusal);
  });
  app.openapi(postImport, async (c) => {
    const { name, dryRun, id, box } = c.req.valid('query');
    const read = await readUpload(c, name);
    if (!read.ok) return refusal(c, read.refusal);
    const what = { rows: read.value.rows, ...(box !== undefined && { box }) };
    if (dryRun) {
      const { bags, skipped, clashes, duplicates } = await lab.read((tx) => previewImport(tx, what));
      return c.json(
        { bags: bags.map(plannedBag), skipped: [...skipped], clashes: [...clashes], duplicates: [...duplicates] },
        200,
      );
    }
    if (id === undefined)
      return problem(c, 'wire-field', { field: 'id', expected: 'a UUID of yours, by which a repeat is known' });
    const outcome = await perform(lab, importList, clock, whoOf(c), { id, source: name, ...what });
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const { bags, parts, pieces, first, last, skipped, made = [], repeat } = outcome.value;
    const imported = { ...doneOf(c, outcome.value), bags, parts, pieces, first, last, skipped: [...skipped], made: [...made] };
    return repeat ? c.json(imported, 200) : c.json(imported, 201);
  });
  app.openapi(postMatch, async (c) => {
    const { name, boards } = c.req.valid('query');
    const read = await readUpload(c, name);
    if (!read.ok) return refusal(c, read.refusal);
    const planned = await planBom(await stock.current(), { rows: read.value.rows, choices: [] }, boards, { spares: false });
    c.header(CHANGE_HEADER, String(planned.change));
    return c.json({ lines: planned.lines.map((line) => lineAnswer(line, sayBecause)) }, 200);
  });
  app.openapi(postKitFile, async (c) => {
    const { name, boards, spares } = c.req.valid('query');
    const read = await readUpload(c, name);
    if (!read.ok) return refusal(c, read.refusal);
    const wish = { name, boards, rows: read.value.rows, choices: [] };
    const { planned, all } = await planAsked(lab, stock, wish, { spares });
    c.header(CHANGE_HEADER, String(planned.change));
    return c.json(kitAnswer(planned, all, sayBecause), 200);
  });
  return app;
}
