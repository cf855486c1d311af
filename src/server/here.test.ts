import assert from 'node:assert/strict';
import { test } from 'node:test';
import { isHere } from './here.ts';
import { ownAddresses } from './network.ts';

const asks = (remoteAddress: string | undefined, host: string, headers: Readonly<Record<string, string>> = {}): boolean =>
  isHere({ remoteAddress, host, header: (name) => headers[name] });

void test('here is who comes by loopback and by a loopback name, both', () => {
  for (const address of ['127.0.0.1', '127.1.2.3', '::1', '::ffff:127.0.0.1'])
    for (const host of ['localhost', 'LOCALHOST:4242', '127.0.0.1:4242', '[::1]:4242'])
      assert.ok(asks(address, host), `${address} ${host}`);
  for (const address of [
    undefined,
    '',
    '192.168.1.7',
    '128.0.0.1',
    '10.127.0.1',
    '::ffff:192.168.1.7',
    'fe80::1',
    '::2',
    '127.0.0.1.5',
    '1127.0.0.1',
  ])
    assert.ok(!asks(address, 'localhost'), String(address));
  for (const host of [
    '',
    'rebound.example',
    '192.168.1.7:4242',
    'localhost.rebound.example',
    'localhost.',
    '127.0.0.2',
    '::1',
    '127.0.0.1.rebound.example',
  ])
    assert.ok(!asks('127.0.0.1', host), host);
});

void test('what a program between passes on is not here', () => {
  for (const name of ['forwarded', 'x-forwarded-for', 'x-real-ip', 'via'])
    assert.ok(!asks('127.0.0.1', 'localhost', { [name]: '' }), name);
});

void test('addresses that others reach this machine by: the network of the house first, the inside of the machine last', () => {
  const ipv4 = (address: string, internal = false) =>
    ({ address, internal, family: 'IPv4', netmask: '', mac: '', cidr: null }) as const;
  const ipv6 = { address: 'fd00::2', internal: false, family: 'IPv6', netmask: '', mac: '', cidr: null, scopeid: 0 } as const;
  const found = ownAddresses({
    lo: [ipv4('127.0.0.1', true)],
    docker0: [ipv4('172.17.0.1')],
    eth1: [ipv4('203.0.113.9')],
    wlan0: [ipv6, ipv4('192.168.1.7'), ipv4('169.254.3.4')],
  });
  assert.deepEqual(found, ['192.168.1.7', '203.0.113.9', '172.17.0.1']);
});
