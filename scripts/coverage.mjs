// node scripts/coverage.mjs: makes docs/curriculum-coverage.md, docs/skill-map.md and the pictures of the skill map anew, from
// the built program. A test compares what is there with what it would make.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { coveragePages } from './skill-pages/coverage-page.mjs';
import { mapPages } from './skill-pages/map-page.mjs';
import { ROOT } from './setup/run.mjs';

for (const [path, text] of [...coveragePages(), ...mapPages()]) {
  mkdirSync(dirname(join(ROOT, path)), { recursive: true });
  writeFileSync(join(ROOT, path), text);
}
