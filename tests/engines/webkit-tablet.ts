import { maker } from '../support/maker.ts';
import { asPage, DrivenPage } from './driven-page.ts';
import { openWebKit } from './web-kit.ts';

/** Sizes of screens, in CSS pixels; the height is that of the window, of which the browser's own bar takes some. */
export const screens = {
  phone: { width: 390, height: 844 },
  tablet: { width: 1280, height: 800 },
  upright: { width: 800, height: 1280 },
} as const;

/** The app in a WebKit with nothing remembered, and the hands that work it. */
export async function webkitTablet(url: string) {
  const webkit = await openWebKit();
  const page = new DrivenPage(webkit.session);
  await page.setViewportSize(screens.tablet);
  await page.goto(url);
  return { ...webkit, page, hands: maker(asPage(page)) };
}
