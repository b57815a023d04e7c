import { inLanguage } from './language.ts';

/** What the data of the app are called; English is what they say themselves. */
export const namesOfData = inLanguage('namesOfData', {
  /** A name or a caution of shared/starting-shop.json. */
  starting: (english: string): string => english,
  /** The name of a size of shared/label-sizes.json. */
  labelSize: (english: string): string => english,
  /** The common name of a wood of shared/species.json, by its id. */
  wood: (_id: string, english: string): string => english,
});
