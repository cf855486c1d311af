import { randomUUID } from 'node:crypto';
import { done, refuse, type Refusal } from '#core/stock/refusal.ts';
import { readBoard } from '#db/boards.ts';
import { freeBuildName } from '#db/build-name.ts';
import { insertBuild, NO_PLAN } from '#db/builds.ts';
import { action, type Action } from './action.ts';
import { begin } from './begin.ts';
import { dateTrouble, firstTrouble, nameTrouble, rangeTrouble } from './checks.ts';
import type { PlanBuildInput, PlanBuildResult } from './inputs.ts';

/** In the middle, so that a build may come before the usual ones as well as after them. */
export const USUAL_PRIORITY = 5;
const MOST_BOARDS = 10_000;
const LAST_PRIORITY = 999;

/** Keeps a build without a promise: nothing is reserved, but every plan reckons with it, by its priority and due date. */
export const planBuild: Action<PlanBuildInput, PlanBuildResult> = action('planBuild', async (tx, clock, who, input) => {
  const { boards, priority = USUAL_PRIORITY, due = null } = input;
  const trouble = wishTrouble(input);
  if (trouble) return { ok: false, refusal: trouble };
  const found = await readBoard(tx, input.board, input.revision);
  if (!found) return refuse('no-such-board', { board: input.board });
  const begun = await begin(tx, clock, who, input, { kind: 'planned' });
  if (!begun.ok) return begun;
  const { board, revision } = found;
  const build = { id: randomUUID(), name: await freeBuildName(tx, input.name?.trim() || board.name), boards, priority, due };
  await insertBuild(tx, input.id, { ...build, board: board.id, revision: revision.id, state: 'planned', ...NO_PLAN });
  return done({
    act: input.id,
    repeat: false,
    change: begun.value,
    warnings: [],
    build: build.id,
    name: build.name,
    board: board.name,
    revision: revision.name,
    boards,
    priority,
    due,
  });
});

/** What is wrong with how many boards of a build are wanted, how urgently, until when, and with its name. */
export function wishTrouble(wish: Pick<PlanBuildInput, 'boards' | 'priority' | 'due' | 'name'>): Refusal | null {
  return firstTrouble(
    rangeTrouble('boards', wish.boards, 1, MOST_BOARDS),
    rangeTrouble('priority', wish.priority ?? USUAL_PRIORITY, 0, LAST_PRIORITY),
    nameTrouble('name', wish.name?.trim() || null),
    wish.due === undefined ? null : dateTrouble('due', wish.due),
  );
}
