import { inLanguage } from './language.ts';

/** A name or a caution of shared/starting-shop.json, for a shop that begins in this language. */
export const startingText = inLanguage('startingText', (english: string): string => english);

/** The common name of a wood of shared/species.json, by its id. */
export const woodName = inLanguage('woodName', (_id: string, english: string): string => english);
