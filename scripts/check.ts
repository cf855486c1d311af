import { CHECKS } from './check-steps.ts';
import { finish, runSteps } from './steps.ts';

const arrows = { name: 'arrows and circles', command: [process.execPath, '--test', 'test/architecture.test.ts'] };
finish(await runSteps([...CHECKS, arrows]));
