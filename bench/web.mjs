// How much the browser has to load: the built files as they are and compressed, and the engine's part of the script.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { ROOT } from './support/measure.mjs';
import { tell } from './support/tell.mjs';

const folder = join(ROOT, 'dist', 'web', 'assets');
const sizes = new Map();
for (const name of readdirSync(folder)) {
  const bytes = readFileSync(join(folder, name));
  const kind = name.split('.').at(-1);
  const before = sizes.get(kind) ?? { files: 0, plain: 0, packed: 0 };
  sizes.set(kind, {
    files: before.files + 1,
    plain: before.plain + bytes.length,
    packed: before.packed + gzipSync(bytes).length,
  });
}
const kB = (bytes) => `${(bytes / 1000).toFixed(0)} kB`;
const WORDS = { js: 'script', css: 'styles', ttf: 'letters (the whole face, two weights)', woff2: 'letters' };
for (const [kind, { files, plain, packed }] of sizes) {
  tell({
    what: `${WORDS[kind] ?? kind}, ${files} ${files === 1 ? 'file' : 'files'}`,
    measured: `${kB(packed)} compressed, ${kB(plain)} plain`,
  });
}

const output = await build({
  root: join(ROOT, 'src', 'web'),
  configFile: join(ROOT, 'vite.config.ts'),
  logLevel: 'error',
  build: { write: false },
});
let whole = 0;
let engine = 0;
for (const file of [output].flat().flatMap((one) => one.output)) {
  for (const [id, part] of Object.entries(file.modules ?? {})) {
    whole += part.renderedLength;
    if (id.replaceAll('\\', '/').includes('/src/engine/')) engine += part.renderedLength;
  }
}
tell({
  what: "the engine's part of the script, before it is made small",
  measured: `${kB(engine)} of ${kB(whole)}, ${((100 * engine) / whole).toFixed(0)} %`,
});
