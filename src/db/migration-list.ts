import type { Migration } from './migration.ts';
import { ledger } from './migrations/0001-ledger.ts';
import { boards } from './migrations/0002-boards.ts';
import { builds } from './migrations/0003-builds.ts';
import { planned } from './migrations/0004-planned.ts';
import { pointers } from './migrations/0005-pointers.ts';
import { drafts } from './migrations/0006-drafts.ts';
import { later } from './migrations/0007-later.ts';
import { devices } from './migrations/0008-devices.ts';
import { identity } from './migrations/0009-identity.ts';

/** Every migration, in order; a name that was released never changes, and nothing is put between. */
export const MIGRATIONS: readonly Migration[] = [ledger, boards, builds, planned, pointers, drafts, later, devices, identity];
