// Closes a test run with one plain line, "N passed, N failed, N skipped", that any program can read.

/** A vitest reporter. */
export class PlainSummaryReporter {
  onTestRunEnd(modules) {
    const counts = { passed: 0, failed: 0, skipped: 0, pending: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) counts[test.result().state] += 1;
      if (module.state() === 'failed' && module.children.size === 0) counts.failed += 1;
    }
    console.log(`\n${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`);
  }
}
