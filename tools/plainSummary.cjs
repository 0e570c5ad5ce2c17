/** A jest reporter that ends the run with one plain line, for people and for CI logs: "412 passed, 0 failed". */
module.exports = class PlainSummary {
  onRunComplete(_, results) {
    const skipped = results.numPendingTests + results.numTodoTests;
    const failed = results.numFailedTests + results.numRuntimeErrorTestSuites;
    process.stdout.write(
      `${results.numPassedTests} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}\n`,
    );
  }
};
