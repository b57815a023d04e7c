import { normalQuantile } from '../../statistics/special-functions.ts';

/**
 * Random numbers by key instead of by turn: the draw `count` of a stream is the same whatever was drawn before it. Two plans
 * that differ in one thing so meet the same luck in everything else (common random numbers; A. M. Law, Simulation Modeling
 * and Analysis, section 11.2, from memory), and replications can be worked out anywhere, in any order.
 */

/** Mixes 32 bits: lowbias32 by Chris Wellons, released to the public domain; constants from memory. */
function mixed(value: number): number {
  let bits = value ^ (value >>> 16);
  bits = Math.imul(bits, 0x7feb352d);
  bits ^= bits >>> 15;
  bits = Math.imul(bits, 0x846ca68b);
  return (bits ^ (bits >>> 16)) >>> 0;
}

/** The key of a part of what has a key; of a seed at first. */
export const keyOf = (key: number, part: number): number =>
  mixed(key ^ mixed(Math.imul(part + 1, 0x9e3779b1)));

/** Draw `count` of a stream as 32 bits. */
export const bitsAt = (key: number, count: number): number => mixed(key ^ Math.imul(count + 1, 0x9e3779b1));

/** The same as a number between 0 and 1, neither of which it ever is. */
export const shareOf = (bits: number): number => (bits + 0.5) / 4294967296;

/** So few that they stay in the fastest memory of a core. */
const NORMALS = 2048;

/**
 * Standard normal numbers at the middles of 2,048 equal parts, stretched so that their variance is 1. The farthest lies
 * 3.5 standard deviations out.
 */
const normals = ((): Float32Array => {
  const table = Float32Array.from({ length: NORMALS }, (_, at) => normalQuantile((at + 0.5) / NORMALS));
  const spread = Math.sqrt(table.reduce((sum, z) => sum + z * z, 0) / NORMALS);
  return table.map((z) => z / spread);
})();

/** A standard normal number by the highest eleven of 32 random bits. */
export const normalOf = (bits: number): number => normals[bits >>> 21] ?? 0;

/** The same by bits 10 to 20, and by the lowest ten: two more numbers out of one draw. */
export const secondNormalOf = (bits: number): number => normals[(bits >>> 10) & 2047] ?? 0;
export const thirdNormalOf = (bits: number): number => normals[(bits & 1023) << 1] ?? 0;
