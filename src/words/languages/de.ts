import type { Translate } from '../language.ts';

const texts: Readonly<Record<string, unknown>> = {};

/** German. */
export const inGerman: Translate = (name, english) => texts[name] ?? english;
