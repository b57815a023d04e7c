import { readFileSync } from 'node:fs';
import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import {
  certificatePage,
  fingerprints,
  inLines,
  joiningPage,
  symbolInTerminal,
} from '../../.ci/hub/pages.mjs';
import { template } from '../../.ci/hub/template.mjs';

const pem = readFileSync(new URL('root.crt', import.meta.url), 'utf8');
const link = `https://192.0.2.7:8443/#/join/${Buffer.from(
  JSON.stringify({ v: 1, a: 'wss://192.0.2.7:8443/sync', s: 'k3abcdefgh', k: 'AAECAwQFBgcICQoLDA0ODw' }),
).toString('base64url')}`;

/** What a reader of symbols that knows nothing of ours makes of squares, dark ones true. */
function read(squares: readonly (readonly boolean[])[]): string | undefined {
  const scale = 4;
  const quiet = 4;
  const side = (squares.length + 2 * quiet) * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      if (squares[Math.floor(y / scale) - quiet]?.[Math.floor(x / scale) - quiet]) {
        pixels.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
      }
    }
  }
  return jsQR(pixels, side, side)?.data;
}

test('the picture in the terminal says the joining link', () => {
  const start = String.fromCharCode(27);
  const lines = symbolInTerminal(link).split('\n');
  expect(lines.every((line) => line.startsWith(`${start}[97;40m`) && line.endsWith(`${start}[0m`))).toBe(
    true,
  );
  // A block is light, and half of one is the upper or the lower square.
  const squares = lines
    .map((line) => line.slice(`${start}[97;40m`.length, -`${start}[0m`.length))
    .flatMap((line) => ['█▀', '█▄'].map((light) => [...line].map((sign) => !light.includes(sign))));
  expect(read(squares)).toBe(link);
});

test('so does the one on the page, beside that of the certificate’s page', () => {
  const certificateAddress = 'http://192.0.2.7:8080/';
  const page = joiningPage(template('joining.html'), {
    shop: 'k3abcdefgh',
    link,
    origin: 'https://192.0.2.7:8443',
    certificateAddress,
    sha256: fingerprints(pem).sha256,
  });
  const drawings = page.match(/<svg[\s\S]*?<\/svg>/g) ?? [];
  const said = drawings.map((drawing) => {
    const [, size = ''] = /viewBox="0 0 (\d+) /.exec(drawing) ?? [];
    const side = Number(size) / 10;
    const squares = Array.from({ length: side }, () => Array.from({ length: side }, () => false));
    for (const [, x, y] of drawing.matchAll(/M(\d+),(\d+)h10v10h-10z/g)) {
      const line = squares[Number(y) / 10];
      if (line) line[Number(x) / 10] = true;
    }
    return read(squares);
  });
  expect(said).toEqual([certificateAddress, link]);
});

test('the fingerprint is the one that openssl prints, in lines that can be compared', () => {
  const { sha256, sha1, name, until } = fingerprints(pem);
  // openssl x509 -in root.crt -noout -fingerprint -sha256 (and -sha1), OpenSSL 3.0.
  expect(sha256).toBe(
    'E8:A6:E4:73:FE:D0:63:2D:0E:1A:54:13:E9:44:C0:1B:43:3A:4D:E5:45:52:00:A1:CE:A2:1F:D5:04:A4:DA:11',
  );
  expect(sha1).toBe('6A:7D:B2:25:3D:9C:79:18:2C:D6:E3:33:99:4C:1C:D8:DA:80:EF:86');
  expect(inLines(sha256)).toEqual([
    'E8:A6:E4:73:FE:D0:63:2D',
    '0E:1A:54:13:E9:44:C0:1B',
    '43:3A:4D:E5:45:52:00:A1',
    'CE:A2:1F:D5:04:A4:DA:11',
  ]);
  expect([name, until]).toEqual(['Tallywright tally.lan', '2036-10-08']);
});

test('what a page is told cannot become markup', () => {
  const page = certificatePage(template('certificate.html'), {
    origin: 'https://x"><script>',
    certificate: pem,
  });
  expect(page).not.toContain('<script>');
});
