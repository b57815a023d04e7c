/** Runs jobs one after another. */
export function oneAtATime(): <Result>(job: () => Promise<Result>) => Promise<Result> {
  let last: Promise<unknown> = Promise.resolve();
  return (job) => {
    const result = last.then(job);
    last = result.catch(() => undefined);
    return result;
  };
}
