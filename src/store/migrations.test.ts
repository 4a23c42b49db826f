import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { MIGRATIONS } from './migrations.js';

it('carries the SQL files as they are', () => {
  const script = fileURLToPath(new URL('../../scripts/embed-migrations.mjs', import.meta.url));
  const { status, stderr } = spawnSync(process.execPath, [script, '--check'], { encoding: 'utf8' });
  expect(stderr).toBe('');
  expect(status).toBe(0);
  for (const { name, hash } of MIGRATIONS) {
    const sql = readFileSync(new URL(`./migrations/${name}.sql`, import.meta.url), 'utf8').replaceAll(
      '\r\n',
      '\n',
    );
    expect(hash).toBe(createHash('sha256').update(sql).digest('hex'));
  }
});
