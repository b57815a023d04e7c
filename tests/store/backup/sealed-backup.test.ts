import { createDecipheriv, hkdfSync, pbkdf2Sync } from 'node:crypto';
import { beforeAll, describe, expect, test } from 'vitest';
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { checkOf } from '../../../src/store/backup/sealed-format.ts';
import { writeBackup } from '../../../src/store/backup/write-backup.ts';
import { openSealed, type SealedBytes, sealBackup } from '../../support/sealed-bytes.ts';
import { about, sampleEntries, text } from './sample-log.ts';

const passphrase = 'beech shavings by the window';
const chunk = 65_536;
const sealedChunk = chunk + 16;

/** Bytes that no packer could shrink: three chunks and a bit. */
const bytesFrom = (seed: number) => {
  const next = seededRandom(seed);
  return (length: number) => Uint8Array.from({ length }, () => Math.floor(next() * 256));
};
const content = bytesFrom(7)(3 * chunk + 1000);

let sealed: SealedBytes;
let body: number;
beforeAll(async () => {
  sealed = await sealBackup(content, { passphrase, random: bytesFrom(11) });
  body = sealed.bytes.indexOf(0x0a) + 1;
}, 60_000);

const headerOf = (bytes: Uint8Array) => JSON.parse(text.decode(bytes.subarray(0, bytes.indexOf(0x0a))));

/** The sealed file with other values in its header. */
function withHeader(change: (header: ReturnType<typeof headerOf>) => unknown): Uint8Array {
  const header = headerOf(sealed.bytes);
  change(header);
  return Buffer.concat([Buffer.from(`${JSON.stringify(header)}\n`), sealed.bytes.subarray(body)]);
}

function flipped(bytes: Uint8Array, at: number): Uint8Array {
  const copy = bytes.slice();
  copy[at] = (copy[at] ?? 0) ^ 1;
  return copy;
}

/** A passphrase is made slow to try on purpose; on a busy machine that takes longer than a usual test may. */
const patience = { timeout: 60_000 };

describe('a sealed backup', patience, () => {
  test('opens with the passphrase and with the twelve words, and with nothing else', async () => {
    const whole = { kind: 'opened', bytes: content, cut: false };
    expect(await openSealed(sealed.bytes, { passphrase })).toEqual(whole);
    expect(sealed.words).toHaveLength(12);
    const typed = sealed.words.map((word) => ` ${word.toUpperCase()}`);
    expect(await openSealed(sealed.bytes, { words: typed })).toEqual(whole);
    const wrong = { kind: 'refused', why: 'wrong-secret' };
    expect(await openSealed(sealed.bytes, { passphrase: `${passphrase} ` })).toEqual(wrong);
    expect(await openSealed(sealed.bytes, { words: sealed.words.slice(1) })).toEqual(wrong);
    expect(await openSealed(sealed.bytes, { words: [...sealed.words].reverse() })).toEqual(wrong);
  });

  test('opens for a passphrase typed on a keyboard that composes its signs otherwise', async () => {
    const random = bytesFrom(3);
    const { bytes } = await sealBackup(Uint8Array.of(1), {
      passphrase: 'Zoë ﬁne ash'.normalize('NFC'),
      random,
    });
    expect(await openSealed(bytes, { passphrase: 'Zoë fine ash'.normalize('NFD') })).toMatchObject({
      kind: 'opened',
    });
  });

  test('is told from a plain one by the reader', () => {
    expect(readBackup(sealed.bytes)).toEqual({ kind: 'refused', why: 'sealed' });
  });

  test('of a real log gives the log again; an empty one and one of whole chunks open too', async () => {
    const file = writeBackup({ entries: sampleEntries(), about });
    for (const bytes of [file, new Uint8Array(0), content.slice(0, 2 * chunk)]) {
      const made = await sealBackup(bytes, { passphrase, random: bytesFrom(5) });
      expect(await openSealed(made.bytes, { words: made.words })).toEqual({
        kind: 'opened',
        bytes,
        cut: false,
      });
    }
  });

  test('is not made with an empty passphrase', async () => {
    await expect(sealBackup(content, { passphrase: '', random: bytesFrom(1) })).rejects.toThrow(RangeError);
  });

  test('is not handed out when it does not open again', async () => {
    // A source that gives the same memory each time: the words are written down of bits that are no more.
    const pool = new Uint8Array(32);
    const next = bytesFrom(2);
    const random = (length: number) => {
      pool.set(next(32));
      return pool.subarray(0, length);
    };
    await expect(sealBackup(content, { passphrase, random })).rejects.toThrow('does not open again');
  });

  test('uses the figure of rounds that OWASP gives (from memory), and another key and nonce each time', async () => {
    const other = await sealBackup(content, { passphrase, random: bytesFrom(12) });
    const [one, two] = [headerOf(sealed.bytes), headerOf(other.bytes)];
    expect(one.passphrase.rounds).toBe(600_000);
    for (const part of ['salt', 'nonce', 'key']) expect(one.passphrase[part]).not.toBe(two.passphrase[part]);
    expect(one.nonce).not.toBe(two.nonce);
    expect(other.words).not.toEqual(sealed.words);
  });
});

describe('a sealed backup, by its description alone and with node:crypto', () => {
  /** Opens AES-256-GCM whose tag stands at its end. */
  function gcm(key: Uint8Array, nonce: Uint8Array, bytes: Uint8Array, data?: Uint8Array): Buffer {
    const decipher = createDecipheriv('aes-256-gcm', key, nonce);
    decipher.setAuthTag(bytes.subarray(-16));
    if (data) decipher.setAAD(data);
    return Buffer.concat([decipher.update(bytes.subarray(0, -16)), decipher.final()]);
  }

  function openChunks(dataKey: Uint8Array): Buffer {
    const prefix = Buffer.from(headerOf(sealed.bytes).nonce, 'hex');
    const count = Math.ceil((sealed.bytes.length - body) / sealedChunk);
    return Buffer.concat(
      [...Array(count).keys()].map((number) => {
        const counter = Buffer.alloc(4);
        counter.writeUInt32BE(number);
        const from = body + number * sealedChunk;
        const data = Buffer.concat([counter, Buffer.from([number === count - 1 ? 1 : 0])]);
        return gcm(
          dataKey,
          Buffer.concat([prefix, counter]),
          sealed.bytes.slice(from, from + sealedChunk),
          data,
        );
      }),
    );
  }

  const hex = (digits: string) => Buffer.from(digits, 'hex');

  test('opens with the passphrase', () => {
    const { salt, nonce, key, rounds } = headerOf(sealed.bytes).passphrase;
    const wrapping = pbkdf2Sync(passphrase, hex(salt), rounds, 32, 'sha256');
    expect(openChunks(gcm(wrapping, hex(nonce), hex(key))).equals(content)).toBe(true);
  });

  test('opens with the bits of the words', () => {
    const { salt, nonce, key } = headerOf(sealed.bytes).words;
    const entropy = bytesFrom(11)(16);
    const wrapping = Buffer.from(hkdfSync('sha256', entropy, hex(salt), 'tallywright recovery words', 32));
    expect(openChunks(gcm(wrapping, hex(nonce), hex(key))).equals(content)).toBe(true);
  });
});

describe('a sealed backup that is damaged', patience, () => {
  test('gives its head when it is cut', async () => {
    for (const length of [0, 5, 100, body - 1, body, body + 10]) {
      const opened = await openSealed(sealed.bytes.slice(0, length), { words: sealed.words });
      const why = length < 22 ? 'not-sealed' : 'damaged';
      expect(opened).toEqual({ kind: 'refused', why });
    }
    for (const chunks of [1, 2, 3])
      for (const more of [0, 1, 500]) {
        const cut = sealed.bytes.slice(0, body + chunks * sealedChunk + more);
        const bytes = content.slice(0, chunks * chunk);
        expect(await openSealed(cut, { words: sealed.words })).toEqual({ kind: 'opened', bytes, cut: true });
      }
  });

  test('loses the chunk that is damaged, and says so; chunks in another order open none', async () => {
    const opened = await openSealed(flipped(sealed.bytes, body + sealedChunk + 9), { words: sealed.words });
    const bytes = Uint8Array.from([...content.slice(0, chunk), ...content.slice(2 * chunk)]);
    expect(opened).toEqual({ kind: 'opened', bytes, cut: true });
    const [head, one, two] = [0, 1, 2].map((part) =>
      sealed.bytes.slice(part && body + (part - 1) * sealedChunk, body + part * sealedChunk),
    );
    const swapped = Buffer.concat([head, two, one].map((part) => part ?? new Uint8Array()));
    expect(await openSealed(swapped, { words: sealed.words })).toEqual({ kind: 'refused', why: 'damaged' });
  });

  test('tells a damaged key from a wrong passphrase, at every byte of its header', async () => {
    for (let at = 0; at < body; at += 1) {
      const opened = await openSealed(flipped(sealed.bytes, at), { words: sealed.words });
      expect(opened.kind === 'refused' && opened.why === 'wrong-secret', `byte ${at}`).toBe(false);
    }
  });

  test('is refused when it asks for too little work or too much, or is of a newer format', async () => {
    for (const rounds of [0, 1, 99_999, 10_000_001, 1e15, -1, 1.5, null]) {
      const file = withHeader((header) => {
        header.passphrase.rounds = rounds;
        header.check = checkOf(header);
      });
      expect(await openSealed(file, { passphrase })).toEqual({ kind: 'refused', why: 'damaged' });
    }
    const newer = withHeader((header) => Object.assign(header, { format: 2 }));
    expect(await openSealed(newer, { passphrase })).toEqual({ kind: 'refused', why: 'newer-format' });
    expect(await openSealed(writeBackup({ entries: [], about }), { passphrase })).toEqual({
      kind: 'refused',
      why: 'not-sealed',
    });
  });
});
