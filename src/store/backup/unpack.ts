import { Gunzip } from 'fflate';
import type { Limits } from './backup-format.ts';
import { crc32 } from './crc32.ts';
import { freshHead, isOwnHead, nextMember, trailerBefore } from './gzip-members.ts';

/** Bytes given to the unpacker at a time. DEFLATE makes at most 1032 of one, so a bomb is met within some 4 MB. */
const piece = 4096;
/** Around damage the pieces get finer, so that nothing before it is lost. */
const finerPieces = [64, 1];
/** Beyond a megabyte the ratio of unpacked to packed bytes is watched. */
const unwatched = 1_000_000;
/** How often the file may be gone through in all: a hostile one can pretend damage without end. */
const passes = 8;

export interface Unpacked {
  readonly kind: 'unpacked' | 'too-big' | 'stopped';
  /** The file goes to the end of its last gzip member, and no member on the way broke off. */
  readonly whole: boolean;
  /** The sums of all members fit. */
  readonly sumsFit: boolean;
  /** Bytes that went through the unpacker, those given to it again at damage among them. */
  readonly work: number;
}

/** Where unpacking stopped: `given` bytes of the member that begins at `member` are out; the fault is at `at` or later. */
interface Fault {
  readonly member: number;
  readonly given: number;
  readonly at: number;
}

/** Thrown through the unpacker to end it. */
class Halt extends Error {
  readonly kind: 'too-big' | 'stopped';
  constructor(kind: Halt['kind']) {
    super(kind);
    this.kind = kind;
  }
}

/**
 * Unpacks gzip of one or many members piece by piece. What can be read before, after and between damage goes to
 * `give`, until it answers false; `gap` is called where something is missing. Never throws, and stops at the limits.
 */
export function unpack(
  bytes: Uint8Array,
  { limits, give, gap }: { limits: Limits; give: (chunk: Uint8Array) => boolean; gap: () => void },
): Unpacked {
  let out = 0;
  let work = 0;
  let members = 0;
  let sumsFit = true;

  function charge(packed: number, unpacked: number): void {
    work += packed;
    out += unpacked;
    if (out > limits.unpacked || (out > unwatched && out > limits.ratio * bytes.length))
      throw new Halt('too-big');
  }

  /** Unpacks from a member on; undefined when it came to the end of the file, and of a member. */
  function run(
    from: number,
    { skip = 0, fineFrom = Number.POSITIVE_INFINITY, fine = piece, mend = false },
  ): Fault | undefined {
    let member = from;
    let given = 0;
    let sum = { crc: 0, length: 0 };
    let at = from;
    let probing = false;
    let skipping = skip;
    const gunzip = new Gunzip((chunk) => {
      if (probing) return;
      sum = { crc: crc32(sum.crc, chunk), length: sum.length + chunk.length };
      given += chunk.length;
      const fresh = chunk.subarray(Math.min(skipping, chunk.length));
      skipping -= chunk.length - fresh.length;
      charge(0, fresh.length);
      if (!give(fresh)) throw new Halt('stopped');
    });
    gunzip.onmember = (offset) => {
      members += 1;
      if (members > limits.members) throw new Halt('too-big');
      member = from + offset;
      const said = trailerBefore(bytes, member);
      if (said.crc !== sum.crc || said.length !== sum.length >>> 0) sumsFit = false;
      given = 0;
      sum = { crc: 0, length: 0 };
    };
    try {
      if (mend) {
        gunzip.push(freshHead());
        at += freshHead().length;
      }
      while (at < bytes.length) {
        const next = bytes.subarray(at, at + (at < fineFrom ? Math.min(piece, fineFrom - at) : fine));
        charge(next.length, 0);
        gunzip.push(next);
        at += next.length;
      }
      // The head of one more member: the unpacker takes it for one only when the last member is whole.
      probing = true;
      gunzip.push(freshHead());
      if (member === bytes.length) return undefined;
    } catch (error) {
      if (error instanceof Halt) throw error;
    }
    return { member, given, at: Math.max(at, member) };
  }

  /** Goes on after each damage with the next member that can be found. Whether there was none. */
  function unpackAll(): boolean {
    let mended = -1;
    let fault = run(0, {});
    const whole = fault === undefined;
    while (fault) {
      for (const fine of finerPieces)
        if (fault && fault.at < bytes.length)
          fault = run(fault.member, {
            skip: fault.given,
            fineFrom: fault.at,
            fine,
            mend: fault.member === mended,
          });
      if (!fault || work > passes * bytes.length) break;
      const spoiltHead = fault.member !== mended && !isOwnHead(bytes, fault.member);
      mended = nextMember(bytes, spoiltHead ? fault.member : fault.member + 1);
      if (mended === -1) break;
      gap();
      fault = run(mended, { mend: true });
    }
    return whole;
  }

  try {
    return { kind: 'unpacked', whole: unpackAll(), sumsFit, work };
  } catch (error) {
    return { kind: error instanceof Halt ? error.kind : 'stopped', whole: false, sumsFit, work };
  }
}
