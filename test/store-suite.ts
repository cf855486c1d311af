import { arrangingSuite } from './store/arranging.ts';
import { bagPageSuite } from './store/bag-page.ts';
import { buildingSuite } from './store/building.ts';
import { clearingSuite } from './store/clearing.ts';
import { decidingSuite } from './store/deciding.ts';
import { draftingSuite } from './store/drafting.ts';
import { importingSuite } from './store/importing.ts';
import { keepingSuite } from './store/keeping.ts';
import type { Store } from './store/lab.ts';
import { laterSuite } from './store/later.ts';
import { modelSuite } from './store/model.ts';
import { movingSuite } from './store/moving.ts';
import { planningSuite } from './store/planning.ts';
import { repeatingSuite } from './store/repeating.ts';

/** many in the long run, few in every run */
const MODEL_RUNS = process.env['BAGATELLE_LONG'] ? 1000 : 60;

/** Everything that the store promises: one suite, run on each engine by its own short test. */
export function storeSuite(store: Store): void {
  movingSuite(store);
  arrangingSuite(store);
  bagPageSuite(store);
  keepingSuite(store);
  clearingSuite(store);
  importingSuite(store);
  draftingSuite(store);
  buildingSuite(store);
  decidingSuite(store);
  laterSuite(store);
  planningSuite(store);
  repeatingSuite(store);
  modelSuite(store, MODEL_RUNS);
}
