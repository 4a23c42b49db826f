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
const packedSize = (names) => {
  const files = names.map((name) => readFileSync(join(folder, name)));
  const plain = files.reduce((sum, bytes) => sum + bytes.length, 0);
  return `${kB(files.reduce((sum, bytes) => sum + gzipSync(bytes).length, 0))} compressed, ${kB(plain)} plain`;
};
const page = readFileSync(join(folder, '..', 'index.html'), 'utf8');
const first = [...page.matchAll(/assets\/([^"]+\.js)"/g)].map(([, name]) => name);
const thread = readdirSync(folder).filter((name) => /^make-worker.*\.js$/.test(name));
tell({ what: 'script before the first screen shows', measured: packedSize(first) });
tell({
  what: 'script of the thread that makes sets, fetched when the Make room is entered',
  measured: packedSize(thread),
});
const WORDS = { js: 'script', css: 'styles', ttf: 'letters (the whole face, two weights)', woff2: 'letters' };
for (const [kind, { files, plain, packed }] of sizes) {
  tell({
    what: `${WORDS[kind] ?? kind}, ${files} ${files === 1 ? 'file' : 'files'}`,
    measured: `${kB(packed)} compressed, ${kB(plain)} plain`,
  });
}

// The engine as the browser needs it, all screens and workers together: everything that src/web imports from it, by one
// entry that exports it all, made small as the app is. What two bundles share is counted once.
const folderOfWeb = join(ROOT, 'src', 'web');
const sources = readdirSync(folderOfWeb, { recursive: true, encoding: 'utf8' }).filter((name) =>
  /(?<!\.test)\.tsx?$/.test(name),
);
const wanted = new Set(
  sources.flatMap((name) =>
    [
      ...readFileSync(join(folderOfWeb, name), 'utf8').matchAll(
        /^(?:import|export)(?! type)[^;]*?'(#engine\/[^']+)'/gm,
      ),
    ].map((found) => found[1]),
  ),
);
const ENTRY = 'engine-for-the-browser';
const { output } = await build({
  root: folderOfWeb,
  configFile: join(ROOT, 'vite.config.ts'),
  logLevel: 'error',
  plugins: [
    {
      name: ENTRY,
      resolveId: (id) => (id === ENTRY ? `\0${ENTRY}` : null),
      load: (id) =>
        id === `\0${ENTRY}`
          ? [...wanted].map((path, at) => `export * as part${at} from '${path}';`).join('\n')
          : null,
    },
  ],
  build: {
    write: false,
    rollupOptions: { input: ENTRY, preserveEntrySignatures: 'strict' },
  },
});
const engine = output.filter((file) => file.type === 'chunk').map(({ code }) => code);
const plain = engine.reduce((sum, code) => sum + Buffer.byteLength(code), 0);
const packed = engine.reduce((sum, code) => sum + gzipSync(code).length, 0);
const TARGET_KB = 250;
tell({
  what: `the engine for all screens and workers of the browser, ${wanted.size} entrances`,
  measured: `${kB(packed)} compressed, ${kB(plain)} plain`,
  target: `${TARGET_KB} kB compressed`,
  met: packed <= TARGET_KB * 1000,
});
