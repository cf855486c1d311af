import assert from 'node:assert/strict';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { test } from 'node:test';
import { homeFolder, homeTrouble } from './home.ts';

const CLONE = dirname(dirname(import.meta.dirname));
const LOCAL = 'disk / ext4 rw 0 0';

void test("the data folder is what BAGATELLE_HOME says, else the user's own", () => {
  assert.equal(homeFolder({ BAGATELLE_HOME: '/srv/lab' }), '/srv/lab');
  if (process.platform === 'linux') {
    assert.equal(homeFolder({ HOME: '/home/ada' }), '/home/ada/.local/share/bagatelle');
    assert.equal(homeFolder({ HOME: '/home/ada', XDG_DATA_HOME: '/data' }), '/data/bagatelle');
  }
});

void test('data is never kept inside the program', () => {
  assert.equal(homeTrouble(join(CLONE, 'data'), LOCAL), 'clone');
  assert.equal(homeTrouble(CLONE, LOCAL), 'clone');
  assert.equal(homeTrouble(`${CLONE}-data`, LOCAL), null, 'a neighbour with the same beginning is another folder');
});

void test('data is not kept on a network drive', () => {
  const mounts = `${LOCAL}\nserver:/export /mnt/lab\\040share nfs4 rw 0 0\nthing /mnt/stick ext4 rw 0 0`;
  assert.equal(homeTrouble('/mnt/lab share/bagatelle', mounts), 'network');
  assert.equal(homeTrouble('/mnt/stick/bagatelle', mounts), null);
  assert.equal(homeTrouble('/mnt/lab shared/bagatelle', mounts), null);
});

void test('data is not kept where another program copies it', () => {
  assert.equal(homeTrouble(join(tmpdir(), 'Dropbox', 'bagatelle'), LOCAL), 'synchronised');
  assert.equal(homeTrouble(join(tmpdir(), 'OneDrive - Lab', 'bagatelle'), LOCAL), 'synchronised');
  assert.equal(homeTrouble(join(tmpdir(), 'lab'), LOCAL), null);
});

void test('data is not kept where the system keeps nothing, nor where no folder can be made', () => {
  assert.equal(homeTrouble('/proc/x/y', `${LOCAL}\nproc /proc proc rw 0 0`), 'no-disk');
  assert.equal(homeTrouble(join(process.execPath, 'lab'), LOCAL), process.execPath.startsWith(CLONE) ? 'clone' : 'not-writable');
  assert.equal(homeTrouble(join(tmpdir(), 'not-there', 'nor-this'), LOCAL), null);
});
