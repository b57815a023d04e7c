import { type Address, hrefOf } from '../address.ts';

/** The link that the app was opened with, when it is one that invites. */
export function invitationIn({ place, rest: [section, join, said] }: Address): string | undefined {
  return place === 'set-up' && section === 'tablets' && join === 'join' && said !== undefined
    ? `#/join/${said}`
    : undefined;
}

/** Leads whoever opened the app with an invitation to where tablets join. */
export function followInvitation(): void {
  const said = /^#\/join\/([^/]+)$/.exec(location.hash)?.[1];
  if (said !== undefined) location.replace(hrefOf('set-up', 'tablets', 'join', said));
}

/** Takes an invitation out of the address and the history: it has the key of the shop in it. What is shown then is `next`. */
export function forgetInvitation(address: Address, next = hrefOf('set-up', 'tablets')): void {
  if (invitationIn(address) === undefined) return;
  history.replaceState(null, '', next);
  dispatchEvent(new HashChangeEvent('hashchange'));
}
