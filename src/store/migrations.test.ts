import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { embeddedMigrations } from '../../scripts/embed-migrations.mjs';

it('carries the SQL files as they are', () => {
  // Wrong? Run `npm run migrations` after a change of schema.ts or of a file in migrations/.
  expect(readFileSync(new URL('./migrations.ts', import.meta.url), 'utf8')).toBe(embeddedMigrations());
});
