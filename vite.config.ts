import { readFile, readdir, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

const PRESSED = /\.(?:js|css|html|svg|json|webmanifest)$/;
const WORTH_IT = 1024;

const press = {
  br: (bytes: Buffer) =>
    promisify(brotliCompress)(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY } }),
  gz: (bytes: Buffer) => promisify(gzip)(bytes, { level: constants.Z_BEST_COMPRESSION }),
} as const;

/** Writes `.br` and `.gz` beside each file that gets smaller by it: the server sends what the browser takes (`server/pages.ts`). */
function pressPages(): Plugin {
  let folder = '';
  return {
    name: 'press-pages',
    apply: 'build',
    configResolved({ root, build }) {
      folder = resolve(root, build.outDir);
    },
    async closeBundle() {
      const names = (await readdir(folder, { recursive: true })).filter((name) => PRESSED.test(name));
      await Promise.all(names.map((name) => pressFile(join(folder, name))));
    },
  };
}

async function pressFile(file: string): Promise<void> {
  const bytes = await readFile(file);
  if (bytes.length < WORTH_IT) return;
  for (const [ending, pressed] of Object.entries(press)) {
    const small = await pressed(bytes);
    if (small.length < bytes.length) await writeFile(`${file}.${ending}`, small);
  }
}

export default defineConfig({
  root: 'src/web',
  plugins: [react(), pressPages()],
  build: { outDir: '../../dist/web', emptyOutDir: true, target: 'es2023', assetsInlineLimit: 0 },
  server: { proxy: { '/api': 'http://127.0.0.1:4242' } },
});
