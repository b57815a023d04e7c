import { inLanguage } from './language.ts';

export const bannerWords = inLanguage('bannerWords', {
  toPlaces: 'Go to places',
  demoBanner: 'Demo shop: nothing here touches your own.',
  leaveDemo: 'Leave demo',
  uncounted: (n: number) =>
    `${n === 1 ? '1 entry' : `${n} entries`} from a newer version or unreadable: kept, but not counted here.`,
});
