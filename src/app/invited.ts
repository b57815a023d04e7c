import { type Invitation, readInvitation, readJoiningLink } from '../replication/joining-link.ts';

/** What a person has: the link of an invitation, or the parts of one, the key in words. */
export type Invited =
  | { readonly link: string }
  | { readonly address: string; readonly shop: string; readonly words: string };

/** Whether a text that was read invites to a shop. */
export const isJoiningLink = (text: string): boolean => readJoiningLink(text) !== undefined;

/** The name of the shop that a link invites to. */
export const shopInvitedTo = (link: string): string | undefined => readJoiningLink(link)?.shop;

/** The list of words is long: it comes when a person uses them. */
export const shopWords = () => import('../replication/shop-words.ts');

export async function invitationOf(invited: Invited): Promise<Invitation | undefined> {
  if ('link' in invited) return readJoiningLink(invited.link);
  const key = (await shopWords()).keyOfWords(invited.words);
  return key && readInvitation({ address: invited.address.trim(), shop: invited.shop.trim(), key });
}
