import { randomUUID } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { createRoute, z, type OpenAPIHono } from '@hono/zod-openapi';
import { clearDemo } from '#actions/clear-demo.ts';
import { fillLab, type Filled } from '#actions/fill-lab.ts';
import { actId } from '#api/acts.ts';
import { fileBody } from '#api/files.ts';
import { BeginRequest, Begun, Cleared, LabView } from '#api/lab.ts';
import { PROBLEMS } from '#api/problem.ts';
import { backupLab } from '#db/backup.ts';
import type { Lab } from '#db/database.ts';
import { readLabCounts } from '#db/lab-counts.ts';
import { beginDemo } from '#demo/begin.ts';
import { actRoute } from '../act-route.ts';
import { apiApp } from '../api-app.ts';
import { json } from '../json.ts';
import { CHANGE_HEADER, callerOf, whoOf, type Served } from '../served.ts';
import { spool, withFolder } from '../spool.ts';

const getLab = createRoute({
  method: 'get',
  path: '/api/lab',
  summary: 'What the lab is, and who is looking',
  responses: { 200: { description: 'the lab', content: json(LabView) }, ...PROBLEMS },
});

const postDemo = actRoute({
  path: '/api/lab/demo',
  summary: 'Fill an empty lab with the demo',
  request: {},
  body: BeginRequest,
  answer: Begun,
});

const postClear = actRoute({
  path: '/api/lab/clear',
  summary: 'Empty the demo lab, after a backup of it',
  request: {},
  body: BeginRequest,
  answer: Cleared,
});

const postRestore = createRoute({
  method: 'post',
  path: '/api/lab/restore',
  summary: 'Fill an empty lab from a backup',
  request: { query: z.object({ id: actId.exactOptional() }), body: fileBody },
  responses: {
    201: { description: 'done', content: json(Begun) },
    200: { description: 'the same id had come before: the same act, done once', content: json(Begun) },
    ...PROBLEMS,
  },
});

const getBackup = createRoute({
  method: 'get',
  path: '/api/backup',
  summary: 'The whole lab as one file, as it is at one moment',
  responses: {
    200: { description: 'the backup', content: { 'application/octet-stream': { schema: z.string() } } },
    ...PROBLEMS,
  },
});

export function labRoutes({ lab, stock, clock, network }: Served): OpenAPIHono {
  const app = apiApp();
  app.openapi(getLab, async (c) => {
    const { bags, boxes, change } = (await stock.current()).stock();
    const { empty, demo, boards, kits } = await lab.read(readLabCounts);
    c.header(CHANGE_HEADER, String(change));
    return c.json(
      {
        bags: bags.length,
        exhausted: bags.filter((bag) => bag.onHand === 0).length,
        toCount: bags.filter((bag) => bag.toCount).length,
        boxes: boxes.length,
        boards,
        kits,
        empty,
        demo,
        you: { name: whoOf(c).name, here: callerOf(c).here },
        lan: network !== null,
      },
      200,
    );
  });
  app.openapi(postDemo, async (c) => {
    const filled = await beginDemo(lab, c.req.valid('json').id);
    c.header(CHANGE_HEADER, String(filled.change));
    return filled.repeat ? c.json(begun(filled), 200) : c.json(begun(filled), 201);
  });
  app.openapi(postClear, async (c) => {
    const { repeat, change, backup } = await clearDemo(lab, clock, c.req.valid('json').id);
    c.header(CHANGE_HEADER, String(change));
    return repeat ? c.json({ change, backup }, 200) : c.json({ change, backup }, 201);
  });
  app.openapi(postRestore, async (c) => {
    const { id = randomUUID() } = c.req.valid('query');
    const filled = await withFolder(async (folder) => {
      // taken in whole before anything is refused: an answer in the middle of a body breaks the connection, and is lost with it
      const file = await spool(c.req.raw, join(folder, 'backup.jsonl'));
      return fillLab(lab, { id, demo: false }, () => Promise.resolve(file));
    });
    c.header(CHANGE_HEADER, String(filled.change));
    return filled.repeat ? c.json(begun(filled), 200) : c.json(begun(filled), 201);
  });
  app.openapi(getBackup, async (c) => {
    const name = `bagatelle-${clock.now().slice(0, 10)}.jsonl`;
    c.header('content-type', 'application/octet-stream');
    c.header('content-disposition', `attachment; filename="${name}"`);
    return c.req.method === 'HEAD' ? c.body(null, 200) : c.body(await backupStream(lab), 200);
  });
  return app;
}

function begun({ change, bags, boards }: Filled): z.infer<typeof Begun> {
  return { change, bags, boards };
}

/** The backup, written whole first: a reader who is slow must not keep the others from the lab. Its file goes when it was read. */
async function backupStream(lab: Lab): Promise<ReadableStream<Uint8Array>> {
  const folder = await mkdtemp(join(tmpdir(), 'bagatelle-backup-'));
  const away = (): Promise<void> => rm(folder, { recursive: true, force: true });
  try {
    const file = join(folder, 'backup.jsonl');
    await backupLab(lab, file);
    const bytes = createReadStream(file);
    bytes.once('close', () => void away());
    return Readable.toWeb(bytes) as ReadableStream<Uint8Array>; // as: Node's own type of the same stream
  } catch (error) {
    await away();
    throw error;
  }
}
