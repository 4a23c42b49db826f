import { homedir } from 'node:os';
import { isAbsolute, join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readEnvironment } from './environment.js';

function read(variables: Record<string, string>) {
  const result = readEnvironment(variables);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

describe('readEnvironment', () => {
  it('serves this computer from the folder of the platform when nothing is said', () => {
    const { host, port, place } = read({});
    expect({ host, port }).toEqual({ host: '127.0.0.1', port: 4680 });
    expect('dataDir' in place && isAbsolute(place.dataDir)).toBe(true);
    expect('dataDir' in place && place.dataDir).toMatch(/afterbell/i);
  });

  it('takes a port, a loopback name, a folder or a database', () => {
    expect(read({ PORT: '80', HOST: '::1' })).toMatchObject({ port: 80, host: '::1' });
    expect(read({ PORT: '65535', HOST: 'localhost' })).toMatchObject({ port: 65_535 });
    expect(read({ AFTERBELL_DATA: '~/my data é' }).place).toEqual({ dataDir: join(homedir(), 'my data é') });
    expect(read({ AFTERBELL_DATA: 'data' }).place).toEqual({ dataDir: resolve('data') });
    expect(read({ AFTERBELL_DATA: 'x', DATABASE_URL: 'postgresql://h/db' }).place).toEqual({
      databaseUrl: 'postgresql://h/db',
    });
    expect(read({ DATABASE_URL: '', AFTERBELL_DATA: '', PORT: '', HOST: '' })).toEqual(read({}));
  });

  it.each([
    ['PORT', '70000'],
    ['PORT', '0'],
    ['PORT', '80a'],
    ['PORT', '-1'],
    ['HOST', '0.0.0.0'],
    ['HOST', '127.0.0.1.evil.example'],
    ['DATABASE_URL', 'mysql://h/db'],
  ])('refuses %s %s in a sentence that names it', (name, value) => {
    const result = readEnvironment({ [name]: value });
    expect(result.ok).toBe(false);
    if (!result.ok) {
      expect(result.error.message).toMatch(new RegExp(`^${name}.*\\.$`));
      expect(result.error.hint).toMatch(/\.$/);
      // An address of a database holds a password.
      if (name === 'DATABASE_URL') expect(result.error.message).not.toContain(value);
    }
  });
});
