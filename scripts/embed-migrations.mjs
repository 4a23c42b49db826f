// Writes src/store/migrations.ts from the SQL files, so that the compiled program carries them. Run by `npm run migrations`;
// with --check it only compares, and fails when they differ.
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import process from 'node:process';

const folder = new URL('../src/store/migrations/', import.meta.url);
const journal = JSON.parse(readFileSync(new URL('meta/_journal.json', folder), 'utf8'));

/** The text of src/store/migrations.ts for the SQL files as they are. */
function embeddedMigrations() {
  const entries = journal.entries.map(({ tag }) => {
    const sql = readFileSync(new URL(`${tag}.sql`, folder), 'utf8').replaceAll('\r\n', '\n');
    const hash = createHash('sha256').update(sql).digest('hex');
    const statements = sql.split('--> statement-breakpoint').map((part) => part.trim());
    return { name: tag, hash, statements };
  });
  return [
    '// Generated from migrations/*.sql by `npm run migrations`; a test compares the two.',
    '',
    'export interface Migration {',
    '  readonly name: string;',
    '  /** SHA-256 of the SQL file. */',
    '  readonly hash: string;',
    '  readonly statements: readonly string[];',
    '}',
    '',
    '// biome-ignore format: generated',
    `export const MIGRATIONS: readonly Migration[] = ${JSON.stringify(entries, null, 2)};`,
    '',
  ].join('\n');
}

const target = new URL('../src/store/migrations.ts', import.meta.url);
if (!process.argv.includes('--check')) {
  writeFileSync(target, embeddedMigrations());
} else if (readFileSync(target, 'utf8').replaceAll('\r\n', '\n') !== embeddedMigrations()) {
  console.error('src/store/migrations.ts differs from the SQL files. Run `npm run migrations`.');
  process.exit(1);
}
