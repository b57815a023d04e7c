/** The pages beside the app: how to trust the shop's certificate, and the picture by which a tablet joins. */
import { X509Certificate } from 'node:crypto';
import { renderSVG, renderUnicodeCompact } from 'uqr';
import { fill } from './template.mjs';

/**
 * How a person compares certificates: pairs of hexadecimal digits.
 *
 * @param {string | Buffer} certificate PEM
 * @returns {{ name: string, sha256: string, sha1: string, until: string }} `until`: the day it ends, as YYYY-MM-DD
 */
export function fingerprints(certificate) {
  const { subject, fingerprint256, fingerprint, validTo } = new X509Certificate(certificate);
  const name = /^CN=(.*)$/m.exec(subject)?.[1] ?? subject;
  return {
    name,
    sha256: fingerprint256,
    sha1: fingerprint,
    until: new Date(validTo).toISOString().slice(0, 10),
  };
}

/**
 * @param {string} template text of shared/hub/certificate.html
 * @param {{ origin: string, certificate: string | Buffer }} what
 */
export function certificatePage(template, { origin, certificate }) {
  const { name, sha256, sha1, until } = fingerprints(certificate);
  return fill(template, {
    authority: inHtml(name),
    origin: inHtml(origin),
    sha256: inLines(sha256).join('<br>'),
    sha1,
    until,
  });
}

/**
 * @param {string} template text of shared/hub/joining.html
 * @param {{ shop: string, link: string, origin: string, certificateAddress: string, sha256: string }} what
 */
export const joiningPage = (template, { shop, link, origin, certificateAddress, sha256 }) =>
  fill(template, {
    shop: inHtml(shop),
    link: inHtml(link),
    origin: inHtml(origin),
    certificateAddress: inHtml(certificateAddress),
    certificateSymbol: symbol(certificateAddress),
    joiningSymbol: symbol(link),
    sha256: inLines(sha256).join('<br>'),
  });

/** Eight pairs a line: nobody compares ninety-five signs in a row. @param {string} sha256 */
export const inLines = (sha256) => (sha256.match(/.{1,24}/g) ?? []).map((line) => line.replace(/:$/, ''));

/** A QR symbol (ISO/IEC 18004) as a drawing. @param {string} text */
const symbol = (text) => renderSVG(text, { border: 4, ecc: 'M' });

/** A QR symbol for a terminal: light on dark blocks, whatever its colours. @param {string} text */
export function symbolInTerminal(text) {
  const lines = renderUnicodeCompact(text, { border: 2, ecc: 'L' }).split('\n');
  return lines.map((line) => `\u001b[97;40m${line}\u001b[0m`).join('\n');
}

/** @param {string} text */
const inHtml = (text) => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
