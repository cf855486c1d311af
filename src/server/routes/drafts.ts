import { randomUUID } from 'node:crypto';
import { createRoute, z, type OpenAPIHono } from '@hono/zod-openapi';
import { changeDraft } from '#actions/change-draft.ts';
import { dropDraft } from '#actions/drop-draft.ts';
import { keepDraft } from '#actions/keep-draft.ts';
import { lostDraft } from '#actions/lost-draft.ts';
import { makeDraft, type OpenDraft } from '#actions/make-draft.ts';
import { readDraftFile } from '#actions/read-draft.ts';
import { showDraft } from '#actions/show-draft.ts';
import { BoardSaved } from '#api/boards.ts';
import { DraftChange, DraftList, DraftQuery, DraftView, KeepDraft } from '#api/drafts.ts';
import { fileBody, Imported } from '#api/files.ts';
import { PROBLEMS } from '#api/problem.ts';
import { readDraft, readDrafts } from '#db/drafts.ts';
import { actRoute } from '../act-route.ts';
import { doneOf } from '../answer-act.ts';
import { apiApp } from '../api-app.ts';
import { draftView } from '../draft-view.ts';
import { json } from '../json.ts';
import { refusal } from '../problem.ts';
import { whoOf, type Served } from '../served.ts';

const draft = z.object({ draft: z.string().max(100) });
const asRead = { 200: { description: 'the file as it is read', content: json(DraftView) }, ...PROBLEMS };

const postDraft = createRoute({
  method: 'post',
  path: '/api/drafts',
  summary: 'Bring a stock list or a BOM to be looked at; nothing of it is stock or board yet',
  request: { query: DraftQuery, body: fileBody },
  responses: {
    201: { description: 'the file as it is read', content: json(DraftView) },
    200: { description: 'the same id had come before: the same draft, as it is read now', content: json(DraftView) },
    ...PROBLEMS,
  },
});

const getDrafts = createRoute({
  method: 'get',
  path: '/api/drafts',
  summary: 'Files that were brought in and are not kept yet',
  responses: { 200: { description: 'the newest first', content: json(DraftList) }, ...PROBLEMS },
});

const getDraft = createRoute({
  method: 'get',
  path: '/api/drafts/{draft}',
  summary: 'A file as it is read, with all that was said of it',
  request: { params: draft },
  responses: asRead,
});

const patchDraft = createRoute({
  method: 'patch',
  path: '/api/drafts/{draft}',
  summary: 'Say what columns hold, answer doubts, leave rows out, name box or board',
  request: { params: draft, body: { required: true, content: json(DraftChange) } },
  responses: asRead,
});

const deleteOne = createRoute({
  method: 'delete',
  path: '/api/drafts/{draft}',
  summary: 'Throw a file away that is not kept yet',
  request: { params: draft },
  responses: { 200: { description: 'it is gone', content: json(draft) }, ...PROBLEMS },
});

const postKeep = actRoute({
  path: '/api/drafts/{draft}/keep',
  summary: 'Make it real: bags from a list, a board or its next revision from a BOM; rows that were left out stay out',
  request: { params: draft },
  body: KeepDraft,
  answer: z.union([Imported, BoardSaved]),
});

export function draftRoutes({ lab, clock }: Served): OpenAPIHono {
  const app = apiApp();
  const view = async (open: OpenDraft): Promise<DraftView> => draftView(await lab.read((tx) => showDraft(tx, open)));
  app.openapi(postDraft, async (c) => {
    const file = new Uint8Array(await c.req.arrayBuffer());
    const made = await makeDraft(lab, clock, { id: randomUUID(), ...c.req.valid('query'), file });
    if (!made.ok) return refusal(c, made.refusal);
    const { repeat, ...open } = made.value;
    return repeat ? c.json(await view(open), 200) : c.json(await view(open), 201);
  });
  app.openapi(getDrafts, async (c) => {
    const drafts = await lab.read(readDrafts);
    return c.json({ drafts: drafts.map(({ id, name, is, made, rows }) => ({ draft: id, name, is, when: made, rows })) }, 200);
  });
  app.openapi(getDraft, async (c) => {
    const { draft: id } = c.req.valid('param');
    const found = await lab.read((tx) => readDraft(tx, id));
    if (!found) return refusal(c, (await lab.read((tx) => lostDraft(tx, id))).refusal);
    const read = await readDraftFile(found);
    return read.ok ? c.json(await view({ draft: found, reading: read.value }), 200) : refusal(c, read.refusal);
  });
  app.openapi(patchDraft, async (c) => {
    const changed = await changeDraft(lab, clock, c.req.valid('param').draft, c.req.valid('json'));
    return changed.ok ? c.json(await view(changed.value), 200) : refusal(c, changed.refusal);
  });
  app.openapi(deleteOne, async (c) => {
    const gone = await dropDraft(lab, c.req.valid('param').draft);
    return gone.ok ? c.json(gone.value, 200) : refusal(c, gone.refusal);
  });
  app.openapi(postKeep, async (c) => {
    const outcome = await keepDraft(lab, clock, whoOf(c), { ...c.req.valid('json'), ...c.req.valid('param') });
    if (!outcome.ok) return refusal(c, outcome.refusal);
    const kept = outcome.value;
    const status = kept.repeat ? 200 : 201;
    if (kept.became === 'board') {
      const { board, revision, lines } = kept;
      return c.json({ ...doneOf(c, kept), board, revision, lines }, status);
    }
    const { bags, parts, pieces, first, last, skipped, made = [] } = kept;
    return c.json({ ...doneOf(c, kept), bags, parts, pieces, first, last, skipped: [...skipped], made: [...made] }, status);
  });
  return app;
}
