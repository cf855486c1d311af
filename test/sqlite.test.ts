import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDatabase } from '#db/database.ts';
import { storeSuite } from './store-suite.ts';

storeSuite({
  engine: 'sqlite',
  async fresh() {
    const home = mkdtempSync(join(tmpdir(), 'bagatelle-lab-'));
    const lab = await openDatabase({ home });
    return {
      lab,
      again: () => openDatabase({ home }),
      async end() {
        await lab.close();
        rmSync(home, { recursive: true, force: true });
      },
    };
  },
});
