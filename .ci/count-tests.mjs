import { existsSync, readFileSync } from "node:fs";

/**
 * Tests passed and failed by Vitest's JSON report. What did not run counts as failed: a skipped test, a file that could
 * not be loaded, no test at all, or a run that ended badly though every test passed.
 */
export function countTests(report, ranWell) {
  if (!existsSync(report)) return { passed: 0, failed: 0, reasons: ["tests (no report was written)"] };
  const counts = JSON.parse(readFileSync(report, "utf8"));
  const passed = counts.numPassedTests;
  const failed = counts.numFailedTests + counts.numPendingTests + counts.numTodoTests;
  const reasons = counts.testResults
    .filter((file) => file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed"))
    .map((file) => `${file.name} (did not run)`);
  if (passed + failed === 0 && reasons.length === 0) reasons.push("tests (none were found)");
  if (!ranWell && failed + reasons.length === 0) reasons.push("tests (the run ended with an error)");
  return { passed, failed, reasons };
}
