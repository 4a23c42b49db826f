import { defineConfig } from 'vitest/config';
import { PlainSummaryReporter } from './test/plain-summary-reporter.js';

// Tests run on the sources: the "afterbell-source" condition makes every #layer import resolve to src/.
// "import" must not be named here: it would reach Node's own require() and break packages that have both forms.
export default defineConfig({
  resolve: { conditions: ['afterbell-source', 'node'] },
  ssr: { resolve: { conditions: ['afterbell-source', 'node'] } },
  test: {
    include: ['src/**/*.test.ts', 'test/**/*.test.ts'],
    env: { TZ: 'Australia/Brisbane' },
    testTimeout: 240_000,
    hookTimeout: 240_000,
    maxWorkers: 2,
    reporters: ['default', new PlainSummaryReporter()],
  },
});
