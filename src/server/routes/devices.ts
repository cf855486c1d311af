import { createRoute, z, type OpenAPIHono } from '@hono/zod-openapi';
import { deviceNameTrouble, forgetDevice, pairAgain, pairDevice } from '#actions/devices.ts';
import { DevicesView, Forgotten, Invite, Paired, PairRequest } from '#api/devices.ts';
import { PROBLEMS } from '#api/problem.ts';
import { readChange } from '#db/change.ts';
import { readDevices } from '#db/devices.ts';
import { apiApp } from '../api-app.ts';
import { makeInvite } from '../invite.ts';
import { json } from '../json.ts';
import { givePass, takePass } from '../pass.ts';
import { problem, refusal } from '../problem.ts';
import { CHANGE_HEADER, callerOf, type Served } from '../served.ts';

const getDevices = createRoute({
  method: 'get',
  path: '/api/devices',
  summary: 'Devices that are paired with the lab',
  responses: { 200: { description: 'devices', content: json(DevicesView) }, ...PROBLEMS },
});

const postInvite = createRoute({
  method: 'post',
  path: '/api/devices/invites',
  summary: 'Invite one device; only at the machine that serves the lab',
  responses: { 201: { description: 'an invitation, good once and for ten minutes', content: json(Invite) }, ...PROBLEMS },
});

const postPair = createRoute({
  method: 'post',
  path: '/api/pair',
  summary: 'Pair a device by the code of an invitation',
  request: { body: { required: true, content: json(PairRequest) } },
  responses: {
    201: { description: 'paired; the token is in a cookie', content: json(Paired) },
    200: { description: 'the same id, name and code had come before: the same device, with a new token', content: json(Paired) },
    ...PROBLEMS,
  },
});

const postForget = createRoute({
  method: 'post',
  path: '/api/devices/{id}/forget',
  summary: 'Forget a device; at the machine that serves the lab, or the device itself',
  request: { params: z.object({ id: z.string().max(100) }) },
  responses: { 200: { description: 'forgotten', content: json(Forgotten) }, ...PROBLEMS },
});

export function deviceRoutes(served: Served): OpenAPIHono {
  const { lab, clock, network, invites } = served;
  const app = apiApp();
  app.openapi(getDevices, async (c) => {
    const [devices, change] = await lab.read(async (tx) => [await readDevices(tx), await readChange(tx)] as const);
    const you = callerOf(c).device?.id;
    c.header(CHANGE_HEADER, String(change));
    return c.json(
      {
        lan: network !== null,
        addresses: network?.urls() ?? [],
        devices: devices.map((device) => ({ ...device, you: device.id === you })),
      },
      200,
    );
  });
  app.openapi(postInvite, async (c) => {
    if (!callerOf(c).here) return problem(c, 'wire-here-only');
    if (!network) return problem(c, 'wire-not-lan');
    const invite = await makeInvite(served);
    return invite ? c.json(invite, 201) : problem(c, 'wire-no-network');
  });
  app.openapi(postPair, async (c) => {
    const { id, code, name } = c.req.valid('json');
    const trouble = deviceNameTrouble(name);
    if (trouble) return refusal(c, trouble);
    const tried = invites.take(code, callerOf(c).address, id === undefined ? null : `${id} ${name}`);
    if (!tried.ok && tried.wait !== null) {
      c.header('retry-after', String(tried.wait));
      return problem(c, 'wire-too-many-tries', { seconds: tried.wait });
    }
    if (!tried.ok) return problem(c, 'wire-code');
    if (tried.before !== null) {
      const known = await pairAgain(lab, tried.before);
      if (!known) return problem(c, 'wire-code');
      givePass(c, known.token);
      return c.json({ device: known.id, name: known.name }, 200);
    }
    try {
      const device = await pairDevice(lab, clock, name);
      if (!device) {
        tried.giveBack();
        return problem(c, 'wire-name-taken', { name });
      }
      tried.used(device.id);
      givePass(c, device.token);
      return c.json({ device: device.id, name: device.name }, 201);
    } catch (error) {
      tried.giveBack(); // nobody was paired by it
      throw error;
    }
  });
  app.openapi(postForget, async (c) => {
    const { id } = c.req.valid('param');
    const { here, device } = callerOf(c);
    if (!here && device?.id !== id) return problem(c, 'wire-here-only');
    if (!(await forgetDevice(lab, id))) return problem(c, 'wire-no-such-device');
    if (device) takePass(c);
    return c.json({ device: id }, 200);
  });
  return app;
}
