import { free } from '#core/stock/stock.ts';
import { ageRanks, numberRanks, GRADE_OF_AIM, type Aim } from './aims.ts';
import type { Flow } from './flow.ts';
import type { Group } from './groups.ts';
import type { Column, Model, Row, Solution } from './model.ts';
import type { Option, Problem } from './problem.ts';

/** One line–bag pair of a group; its columns in the model are `2 × at` (pieces) and `2 × at + 1` (opened or not). */
interface Pair {
  readonly line: number;
  readonly option: Option;
  readonly most: number;
}

export interface GroupModel {
  readonly model: Model;
  readonly pairs: readonly Pair[];
}

/** The takes of a group as a mixed-integer model without an aim: bags hold, lines want, complete boards are kept. */
export function modelOf(problem: Problem, group: Group, boards: readonly number[]): GroupModel {
  const pairs = group.lines.flatMap((at): Pair[] => {
    const line = problem.lines[at];
    return (line?.options ?? []).map((option) => ({
      line: at,
      option,
      most: Math.min(line?.need ?? 0, holds(problem, option.bag)),
    }));
  });
  const columns = pairs.flatMap(({ line, option, most }): Column[] => [
    { name: `take ${line} ${option.bag}`, cost: 0, low: 0, high: most, whole: true },
    { name: `open ${line} ${option.bag}`, cost: 0, low: 0, high: 1, whole: true },
  ]);
  const rows = [
    ...group.bags.map((bag): Row => ({
      name: `bag ${bag}`,
      low: 0,
      high: holds(problem, bag),
      terms: termsOf(pairs, (pair) => pair.option.bag === bag),
    })),
    ...group.lines.map((at): Row => {
      const { build = 0, perBoard = 0, need = 0 } = problem.lines[at] ?? {};
      return {
        name: `line ${at}`,
        low: (boards[build] ?? 0) * perBoard,
        high: need,
        terms: termsOf(pairs, (pair) => pair.line === at),
      };
    }),
    ...pairs.map(({ most }, at): Row => ({
      name: `opens ${at}`,
      low: -Infinity,
      high: 0,
      terms: [
        [2 * at, 1],
        [2 * at + 1, -most],
      ],
    })),
  ];
  return { model: { sense: 'min', columns, rows }, pairs };
}

function holds(problem: Problem, bag: number): number {
  const found = problem.bags[bag];
  return found ? free(found) : 0;
}

function termsOf(pairs: readonly Pair[], want: (pair: Pair) => boolean): Row['terms'] {
  return pairs.flatMap((pair, at) => (want(pair) ? [[2 * at, 1] as const] : []));
}

/** The cost of every column for one aim; null where the aim says nothing about this group (short pieces are settled before). */
export function costsOf(problem: Problem, group: Group, { pairs }: GroupModel, aim: Aim): number[] | null {
  const [ages, numbers] = [ageRanks(problem, group), numberRanks(group)];
  const grade = GRADE_OF_AIM[aim];
  const piece = ({ line, option }: Pair): number => {
    if (aim === 'order') return problem.lines[line]?.build ?? 0;
    if (aim === 'age') return ages.get(option.bag) ?? 0;
    if (aim === 'number') return numbers.get(option.bag) ?? 0;
    return grade !== undefined && option.grade === grade ? 1 : 0;
  };
  const costs = pairs.flatMap((pair) => (aim === 'opened' ? [0, 1] : [piece(pair), 0]));
  const moving = aim === 'opened' || new Set(pairs.map(piece)).size > 1;
  return moving ? costs : null;
}

/** The model with one aim as its objective. */
export function withAim(model: Model, costs: readonly number[]): Model {
  return { ...model, columns: model.columns.map((column, at) => ({ ...column, cost: costs[at] ?? 0 })) };
}

/** The model that gives up nothing of an aim already reached. */
export function withFloor(model: Model, aim: Aim, costs: readonly number[], reached: number): Model {
  const terms = costs.flatMap((cost, at) => (cost === 0 ? [] : [[at, cost] as const]));
  return { ...model, rows: [...model.rows, { name: `keep ${aim}`, low: -Infinity, high: reached, terms }] };
}

/** The model in which a group gets as many pieces as a flow found; short pieces are settled with that. */
export function withServed({ model, pairs }: GroupModel, pieces: number): Model {
  return {
    ...model,
    rows: [...model.rows, { name: 'keep short', low: pieces, high: Infinity, terms: termsOf(pairs, () => true) }],
  };
}

/** A flow as columns, for the solver to begin with. */
export function columnsOf({ pairs }: GroupModel, flow: Flow): number[] {
  return pairs.flatMap(({ line, option }) => {
    const pieces = flow[line]?.get(option.bag) ?? 0;
    return [pieces, pieces > 0 ? 1 : 0];
  });
}

/** What the solver's columns mean: pieces of each line from each bag. */
export function readSolution(problem: Problem, { pairs }: GroupModel, solution: Solution): Flow {
  const flow: Flow = problem.lines.map(() => new Map());
  pairs.forEach(({ line, option }, at) => {
    const pieces = solution.values[2 * at] ?? 0;
    if (pieces > 0) flow[line]?.set(option.bag, pieces);
  });
  return flow;
}
