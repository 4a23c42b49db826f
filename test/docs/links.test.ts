// What the pages name exists: files they link to, and paths of sources, tests and scripts they mention.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const PAGES = [
  'README.md',
  'CONTRIBUTING.md',
  'CHANGELOG.md',
  ...readdirSync(join(ROOT, 'docs'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.md'))
    .map((name) => join('docs', name)),
];

/** Targets of links and pictures that are files, relative to the page. */
function linksIn(text: string): string[] {
  return [...text.matchAll(/\]\(([^)\s]+)\)/g)]
    .map((found) => found[1] ?? '')
    .filter((target) => !/^[a-z]+:|^#/.test(target))
    .map((target) => target.replace(/#.*$/, ''));
}

/** Paths in code spans that start in one of our folders; those with a placeholder are left out. */
function pathsIn(text: string): string[] {
  return [...text.matchAll(/`((?:src|test|docs|bench|scripts)\/[^`\s]*)`/g)]
    .map((found) => found[1] ?? '')
    .filter((path) => !/[*<>{}…]/.test(path));
}

describe.each(PAGES)('%s', (page) => {
  const text = readFileSync(join(ROOT, page), 'utf8');

  it('links only to files that exist', () => {
    expect(linksIn(text).filter((target) => !existsSync(join(ROOT, dirname(page), target)))).toEqual([]);
  });

  it('names only paths that exist', () => {
    expect(pathsIn(text).filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  });
});

describe('the check itself', () => {
  it('sees links and paths, and leaves addresses alone', () => {
    const text =
      'See [a](one.md#part), ![b](images/b.png), <https://example.org>, [c](https://example.org), `src/x.ts`.';
    expect(linksIn(text)).toEqual(['one.md', 'images/b.png']);
    expect(pathsIn(`${text} \`src/**/*.ts\` \`npm test\``)).toEqual(['src/x.ts']);
  });

  it('has enough to look at', () => {
    const all = PAGES.flatMap((page) => pathsIn(readFileSync(join(ROOT, page), 'utf8')));
    expect(all.length).toBeGreaterThan(20);
  });
});
