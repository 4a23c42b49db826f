// Where the typeface lies, and its bytes: the publisher's full Andika files, as a package (see docs/decisions/002-print.md).
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

const folder = dirname(createRequire(import.meta.url).resolve('@expo-google-fonts/andika/package.json'));

/** The regular and bold faces as TrueType bytes, in that order. */
export function andikaFaces(): readonly [regular: Buffer, bold: Buffer] {
  return [
    readFileSync(join(folder, 'Andika_400Regular.ttf')),
    readFileSync(join(folder, 'Andika_700Bold.ttf')),
  ];
}
