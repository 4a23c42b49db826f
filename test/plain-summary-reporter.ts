// Closes a test run with one plain line, "N passed, N failed, N skipped", that any program can read.
import type { Reporter, TestModule } from 'vitest/node';

export class PlainSummaryReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const counts = { passed: 0, failed: 0, skipped: 0, pending: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) counts[test.result().state] += 1;
      // A file that cannot be loaded has no tests to count, but is a failure all the same.
      if (module.state() === 'failed' && module.children.size === 0) counts.failed += 1;
    }
    console.log(`\n${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`);
  }
}
