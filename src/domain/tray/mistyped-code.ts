import { codeAlphabet } from './code-alphabet.ts';
import { parseTrayCode, type TrayCode, tidyCode } from './tray-code.ts';

/**
 * What to say of a typed code that no live tray carries. `suspect` is the place (from 0) of the one character
 * that must be wrong, when all live codes within one slip agree on it; `offers` are the nearest live codes.
 */
export interface Mistyped {
  readonly fault: 'empty' | 'strange-character' | 'check-fails' | 'no-such-tray';
  readonly suspect: number | null;
  readonly offers: readonly TrayCode[];
}

/** Judges a typed code against the codes of live trays; undefined when it is one of them. */
export function judgeTypedCode(typed: string, live: readonly TrayCode[]): Mistyped | undefined {
  const text = tidyCode(typed);
  if (text === '') return { fault: 'empty', suspect: null, offers: [] };
  const code = parseTrayCode(text);
  if (code !== undefined && live.includes(code)) return undefined;
  const offers = nearestCodes(text, live);
  const strange = [...text].findIndex((character) => !codeAlphabet.includes(character));
  if (strange >= 0) return { fault: 'strange-character', suspect: strange, offers };
  return {
    fault: code === undefined ? 'check-fails' : 'no-such-tray',
    suspect: code === undefined ? suspectPlace(text, offers) : null,
    offers,
  };
}

function suspectPlace(text: string, offers: readonly TrayCode[]): number | null {
  const places = new Set(
    offers.map((offer) => onlyWrongPlace(text, offer)).filter((place) => place !== null),
  );
  const [only] = places;
  return places.size === 1 && only !== undefined ? only : null;
}

/** The one place (from 0) at which the texts differ; null when they differ in more or in length. */
function onlyWrongPlace(text: string, code: string): number | null {
  const wrong = [...code].flatMap((character, place) => (character === text[place] ? [] : [place]));
  const [only] = wrong;
  return code.length === text.length && wrong.length === 1 && only !== undefined ? only : null;
}

const mostOffers = 4;
const farthestOffer = 2;

/**
 * Live codes within two slips (a wrong, missing, doubled or swapped character), nearest first; of equally near
 * ones those with one wrong character, the commonest slip. Four at most, but none of these is left out.
 */
export function nearestCodes(typed: string, live: readonly TrayCode[]): readonly TrayCode[] {
  const text = tidyCode(typed);
  return live
    .map((code) => ({ code, slips: slipsBetween(text, code), misread: onlyWrongPlace(text, code) !== null }))
    .filter(({ slips }) => slips <= farthestOffer)
    .sort(
      (a, b) =>
        a.slips - b.slips ||
        Number(b.misread) - Number(a.misread) ||
        a.code.localeCompare(b.code, 'en', { numeric: true }),
    )
    .filter(({ misread }, index) => misread || index < mostOffers)
    .map(({ code }) => code);
}

/** Optimal string alignment distance (Damerau-Levenshtein without editing a swapped pair again). */
function slipsBetween(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  const at = (i: number, j: number) => rows[i]?.[j] ?? Number.POSITIVE_INFINITY;
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    rows.push(row);
    for (let j = 1; j <= b.length; j += 1) {
      const differs = a[i - 1] === b[j - 1] ? 0 : 1;
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(
        Math.min(
          at(i - 1, j) + 1,
          at(i, j - 1) + 1,
          at(i - 1, j - 1) + differs,
          swapped ? at(i - 2, j - 2) + 1 : 99,
        ),
      );
    }
  }
  return at(a.length, b.length);
}
