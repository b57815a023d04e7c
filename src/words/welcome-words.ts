import { inLanguage } from './language.ts';

export const welcomeWords = inLanguage('welcomeWords', {
  title: 'Tallywright',
  lead: 'A tally of every piece, from the blank to the shelf, by tapping at the lathe. It works without a network, and all of it stays on this tablet.',
  newShop: 'New shop',
  newShopDetail: 'Begins with a route for turned handles that you can change',
  restore: 'Restore',
  restoreDetail: 'Brings a shop back from a copy',
  restoreHereDetail: 'Brings a shop back: this tablet has copies',
  demo: 'Demo shop',
  demoDetail: 'A batch of awl hafts half way through, to try everything on',
  caution:
    'Turning, dust, glue and finishes can hurt people. The cautions shown are the usual ones: your local codes, safety data sheets and licensed advice rule.',
});
