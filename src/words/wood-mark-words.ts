import { inLanguage } from './language.ts';

/** Stands beside the name of a wood that the maker reacted to, wherever that name stands. */
export const woodMarkWords = inLanguage('woodMarkWords', { reacted: 'you reacted' });
