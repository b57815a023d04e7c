import { readFileSync } from 'node:fs';

const sheet = readFileSync(new URL('../../../src/ui/theme/tokens.css', import.meta.url), 'utf8');

/** The declarations of the block that begins with this selector. */
const blockOf = (selector: string): ReadonlyMap<string, string> => {
  const start = sheet.indexOf(`${selector} {`);
  if (start < 0) throw new Error(`tokens.css has no block "${selector}"`);
  const block = sheet.slice(start, sheet.indexOf('}', start));
  return new Map(
    [...block.matchAll(/--([\w-]+):\s*([^;]+);/g)].map(([, name = '', value = '']) => [name, value]),
  );
};

const sizes = blockOf(':root');

/** A size in px; in `max(44px, 2.75rem)` and the like, the part in px. */
export const px = (name: string): number => {
  const found = /([\d.]+)px/.exec(sizes.get(name) ?? '');
  if (!found) throw new Error(`--${name} is no size in px`);
  return Number(found[1]);
};

/** A colour of a theme, '#rrggbb'. */
export const colour = (theme: 'light' | 'dark' | 'glare', name: string): string => {
  const value = blockOf(`[data-theme="${theme}"]`).get(name) ?? '';
  if (!/^#[0-9a-f]{6}$/.test(value)) throw new Error(`--${name} of ${theme} is no colour: "${value}"`);
  return value;
};
