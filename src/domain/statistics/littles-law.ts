/** Two of the three are known, in units that agree: pieces, pieces per hour and hours, say. */
export interface Flow {
  readonly wip: number;
  readonly throughput: number;
  readonly leadTime: number;
}

/**
 * Little's law: work in progress = throughput × lead time, as averages over a stretch in which as much comes in as
 * goes out (J. D. C. Little, A proof for the queuing formula L = λW, Operations Research 9 (1961) 383-387; J. D. C.
 * Little and S. C. Graves, chapter 5 in Building Intuition, Springer 2008).
 *
 * @returns all three; not yet known unless exactly two are given, or when the third would be anything (÷ 0)
 * @throws {RangeError} for one that is negative or no number
 * @example littlesLaw({ wip: 160, throughput: 8 })?.leadTime // => 20
 */
export function littlesLaw({ wip, throughput, leadTime }: Partial<Flow>): Flow | undefined {
  for (const given of [wip, throughput, leadTime]) {
    if (given !== undefined && !(given >= 0 && given < Number.POSITIVE_INFINITY))
      throw new RangeError(`no measure of a flow: ${given}`);
  }
  if (wip === undefined && throughput !== undefined && leadTime !== undefined)
    return { wip: throughput * leadTime, throughput, leadTime };
  if (throughput === undefined && wip !== undefined && leadTime)
    return { wip, throughput: wip / leadTime, leadTime };
  if (leadTime === undefined && wip !== undefined && throughput)
    return { wip, throughput, leadTime: wip / throughput };
  return undefined;
}
