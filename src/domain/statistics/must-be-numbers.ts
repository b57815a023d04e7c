/** @throws {RangeError} when one of them is infinite or no number */
export function mustBeNumbers(values: readonly number[]): void {
  const strange = values.find((value) => !Number.isFinite(value));
  if (strange !== undefined) throw new RangeError(`not a number to reckon with: ${strange}`);
}
