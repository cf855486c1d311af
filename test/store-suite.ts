import { keepingSuite } from './store/keeping.ts';
import type { Store } from './store/lab.ts';
import { movingSuite } from './store/moving.ts';

/** Everything that the store promises: one suite, run on each engine by its own short test. */
export function storeSuite(store: Store): void {
  movingSuite(store);
  keepingSuite(store);
}
