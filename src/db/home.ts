import { accessSync, constants, existsSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { homedir, platform } from 'node:os';
import { dirname, join, resolve, sep } from 'node:path';

const CLONE = dirname(dirname(import.meta.dirname));

/** File systems of other machines, as the mount table names them: SQLite's locks and its shared memory can't be trusted there. */
const NETWORK =
  /^(?:nfs\d?|cifs|smb\d?|smbfs|afs|afpfs|ncpfs|ceph|glusterfs|lustre|davfs|webdav|fuse\.(?:sshfs|rclone|davfs2?|s3fs|gvfsd-fuse|glusterfs|cephfs|google-drive-ocamlfuse|onedriver))$/;
/** What the system shows as files but keeps nowhere; making a folder there never ends in some versions of Node. */
const NO_DISK = /^(?:proc|sysfs|cgroup2?|devpts|debugfs|tracefs|securityfs|configfs|pstore|bpf|mqueue|efivarfs|binfmt_misc)$/;
/** Folders that a synchronising program copies behind our back, by the names that such programs give them. */
const SYNCHRONISED =
  /^(?:dropbox.*|onedrive.*|google ?drive.*|my drive|icloud ?drive|mobile documents|cloudstorage|nextcloud.*|owncloud.*|pcloud ?drive|megasync.*|mega|box sync|syncthing|seafile|yandex\.disk|tresorit.*)$/i;

/** The lab's data folder: `BAGATELLE_HOME`, else the user's data folder. */
export function homeFolder(env: Readonly<Record<string, string | undefined>> = process.env): string {
  const wanted = env['BAGATELLE_HOME'];
  if (wanted) return resolve(wanted);
  const user = env['HOME'] ?? env['USERPROFILE'] ?? homedir();
  if (platform() === 'darwin') return join(user, 'Library', 'Application Support', 'Bagatelle');
  if (platform() === 'win32') return join(env['LOCALAPPDATA'] ?? join(user, 'AppData', 'Local'), 'Bagatelle');
  return join(env['XDG_DATA_HOME'] ?? join(user, '.local', 'share'), 'bagatelle');
}

type HomeTrouble = 'clone' | 'network' | 'synchronised' | 'no-disk' | 'not-writable';

/** Why data must not, or can not, be kept in the folder; null where it may. A folder that is not there yet is judged by the nearest above it. */
export function homeTrouble(folder: string, mounts: string = mountTable()): HomeTrouble | null {
  const real = realFolder(resolve(folder));
  if (isInside(real, realFolder(CLONE))) return 'clone';
  const system = fileSystemOf(real, mounts);
  if (real.startsWith('\\\\') || NETWORK.test(system)) return 'network';
  if (NO_DISK.test(system)) return 'no-disk';
  if (real.split(sep).some((name) => SYNCHRONISED.test(name))) return 'synchronised';
  return existsSync(real) || canMakeIn(nearest(real)) ? null : 'not-writable';
}

function nearest(folder: string): string {
  const parent = dirname(folder);
  return existsSync(folder) || parent === folder ? folder : nearest(parent);
}

function canMakeIn(folder: string): boolean {
  try {
    accessSync(folder, constants.W_OK | constants.X_OK);
    return statSync(folder).isDirectory();
  } catch {
    return false;
  }
}

function isInside(folder: string, outer: string): boolean {
  return folder === outer || folder.startsWith(outer + sep);
}

/** The folder with its links followed, as far as it exists. */
function realFolder(folder: string): string {
  try {
    return realpathSync(folder);
  } catch {
    const parent = dirname(folder);
    return parent === folder ? folder : join(realFolder(parent), folder.slice(parent.length).replace(/^[\\/]/, ''));
  }
}

/** Type of the file system that holds the folder: that of the longest mount point above it; '' where nothing is known. */
function fileSystemOf(folder: string, mounts: string): string {
  let longest = '';
  let found = '';
  for (const line of mounts.split('\n')) {
    const [, point = '', type = ''] = line.split(' ');
    const path = point.replaceAll('\\040', ' ');
    const holds = path === '/' || isInside(folder, path);
    if (!path || !holds || path.length < longest.length) continue;
    longest = path;
    found = type;
  }
  return found;
}

function mountTable(): string {
  try {
    return readFileSync('/proc/self/mounts', 'utf8');
  } catch {
    return '';
  }
}
