import { writeSync } from 'node:fs';
import type { Reporter, TestModule, Vitest } from 'vitest/node';
import { closingLine } from './closing-line.ts';
import { countRun } from './count-run.ts';

/** Ends the run's output with `N passed, N failed`, all projects together, after whatever else is still printed. */
export class ClosingLineReporter implements Reporter {
  #watching = false;
  #count = { passed: 0, failed: 0 };

  onInit({ config }: Vitest) {
    this.#watching = config.watch;
    process.once('exit', () => this.#close());
  }

  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]) {
    this.#count = countRun(modules, errors);
  }

  #close() {
    if (this.#watching) return;
    if (this.#count.failed > 0) process.exitCode ||= 1;
    const sound = !process.exitCode && this.#count.passed > 0;
    writeSync(process.stdout.fd, `\n${closingLine(this.#count, { sound })}\n`);
  }
}
