/** Entries written out at a time (some 10 ms); a tap comes in between. */
const piece = 2000;

/** A log for a worker, an entry a line: text goes between threads at a fraction of the cost of objects. */
export async function linesOf(log: readonly object[]): Promise<readonly (readonly string[])[]> {
  const lines: string[][] = [];
  for (let at = 0; at < log.length; at += piece) {
    lines.push(log.slice(at, at + piece).map((entry) => JSON.stringify(entry)));
    await letTapsIn();
  }
  return lines;
}

const letTapsIn = () => new Promise<void>((resume) => setTimeout(resume, 0));
