// The rules of the architecture hold for every source file, and each rule is shown to fail on a planted offence.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { offencesIn } from './rules.js';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

function sources(): string[] {
  return readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
    .map((path) => `src/${path.replaceAll('\\', '/')}`)
    .filter(
      (path) => /\.(ts|tsx|js|mjs)$/.test(path) && !/\.test\.tsx?$/.test(path) && !path.includes('/testing/'),
    );
}

describe('every source file', () => {
  it('keeps the rules', () => {
    const files = sources();
    expect(files.length).toBeGreaterThan(100);
    expect(files.flatMap((path) => offencesIn(path, readFileSync(join(ROOT, path), 'utf8')))).toEqual([]);
  });
});

describe('a planted offence is found:', () => {
  const planted: readonly (readonly [string, string, string])[] = [
    ['engine importing the store', 'src/engine/x.ts', "import type { Store } from '#store/store.js';"],
    ['engine importing a package', 'src/engine/x.ts', "import { z } from 'zod';"],
    [
      'engine leaving its layer by a relative path',
      'src/engine/a/x.ts',
      "import { y } from '../../api/y.js';",
    ],
    ['engine rolling its own dice', 'src/engine/x.ts', 'export const x = Math.random();'],
    ['engine reading the clock', 'src/engine/x.ts', 'export const now = () => new Date();'],
    ['engine touching the page', 'src/engine/x.ts', 'document.title = "x";'],
    ['engine importing later', 'src/engine/x.ts', "const y = await import('#print/press.js');"],
    ['print importing the store', 'src/print/x.ts', "import { openStore } from '#store/open-store.js';"],
    ['store importing print', 'src/store/x.ts', "export { Press } from '#print/press.js';"],
    ['api importing the server', 'src/api/x.ts', "import type { Services } from '#server/app/services.js';"],
    ['the app importing Node', 'src/server/app/x.ts', "import { readFileSync } from 'node:fs';"],
    [
      'the app opening a store itself',
      'src/server/app/x.ts',
      "import { openStore } from '#store/open-store.js';",
    ],
    ['the app reading the process', 'src/server/app/x.ts', 'const port = process.env.PORT;'],
    [
      'the app importing its host',
      'src/server/app/x.ts',
      "import { serveApp } from '#server/node/serve.js';",
    ],
    ['web importing the server', 'src/web/x.tsx', "import { createApp } from '#server/app/app.js';"],
    ['web importing Node', 'src/web/x.tsx', "import { join } from 'node:path';"],
  ];
  it.each(planted)('%s', (_, path, text) => {
    expect(offencesIn(path, text)).not.toEqual([]);
  });
  it('while allowed imports and words in comments pass', () => {
    expect(offencesIn('src/web/x.ts', "import { SKILLS } from '#engine/skills/map.js';")).toEqual([]);
    expect(
      offencesIn('src/engine/x.ts', "// Math.random has no place here\nexport const x = 'new Date()';"),
    ).toEqual([]);
  });
});

describe('the compiler refuses', () => {
  const folder = join(ROOT, '.cache', 'architecture');
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** What the compiler says to a file compiled under a layer's own settings. */
  function complaints(layer: string, text: string): string {
    const place = join(folder, layer.replace('/', '-'));
    mkdirSync(place, { recursive: true });
    writeFileSync(join(place, 'planted.ts'), text);
    writeFileSync(
      join(place, 'tsconfig.json'),
      JSON.stringify({
        extends: `../../../src/${layer}/tsconfig.json`,
        compilerOptions: { rootDir: '.', outDir: './out', tsBuildInfoFile: './out/info', composite: true },
        include: ['planted.ts'],
      }),
    );
    const compiler = join(ROOT, 'node_modules/typescript/bin/tsc');
    const result = spawnSync(process.execPath, [compiler, '-p', place, '--noEmit'], { encoding: 'utf8' });
    return result.stdout;
  }

  it.each([
    [
      'an upward import, even of a type',
      'engine',
      "import type { Store } from '#store/store.js';\nexport type S = Store;",
    ],
    ['the page in the engine', 'engine', 'export const title = document.title;'],
    ['Node in the engine', 'engine', 'export const where = process.cwd();'],
    [
      'Node in the app',
      'server/app',
      "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;",
    ],
  ])('%s', (_, layer, text) => {
    expect(complaints(layer, text)).toMatch(/error TS/);
  });
  it('nothing in a clean file', () => {
    expect(complaints('engine', 'export const one = 1;')).toBe('');
  });
});
