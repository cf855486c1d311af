import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDatabase, type Lab } from '#db/database.ts';
import { serveLab } from '#server/start.ts';

/** An answer of the interface: every one is an object. */
export interface HttpTold {
  readonly status: number;
  readonly headers: Headers;
  readonly body: Readonly<Record<string, unknown>>;
}

/** A lab behind its web interface, on a port of its own. */
export interface HttpLab {
  readonly lab: Lab;
  /** without a slash at its end */
  readonly url: string;
  get(path: string): Promise<HttpTold>;
  /** posts a JSON body, under a new id unless it has one */
  act(path: string, body: object): Promise<HttpTold>;
  upload(path: string, text: string): Promise<HttpTold>;
  end(): Promise<void>;
}

const CLOCK = { now: () => '2026-03-01T09:00:00.000Z' };

export async function httpLab(): Promise<HttpLab> {
  const home = mkdtempSync(join(tmpdir(), 'bagatelle-http-'));
  const lab = await openDatabase({ home });
  const served = await serveLab(lab, CLOCK, { lan: false, port: 0 });
  assert.ok(!('fault' in served));
  const url = served.url.replace(/\/$/, '');
  const ask = async (path: string, init: RequestInit = {}): Promise<HttpTold> => {
    const response = await fetch(url + path, init);
    return { status: response.status, headers: response.headers, body: (await response.json()) as HttpTold['body'] }; // as: every answer is an object
  };
  const send = (type: string, path: string, body: string): Promise<HttpTold> =>
    ask(path, { method: 'POST', headers: { 'content-type': type }, body });
  return {
    lab,
    url,
    get: (path) => ask(path),
    act: (path, body) => send('application/json', path, JSON.stringify({ id: randomUUID(), ...body })),
    upload: (path, text) => send('application/octet-stream', path, text),
    async end() {
      await served.stop();
      await lab.close();
      rmSync(home, { recursive: true });
    },
  };
}

/** The body of an answer that must have this status. */
export async function bodyOf<T>(told: Promise<HttpTold>, status = 200): Promise<T> {
  const { status: got, body } = await told;
  assert.equal(got, status, JSON.stringify(body));
  return body as T; // as: the caller names the schema of what it asked
}
