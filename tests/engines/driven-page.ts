/** What the hands of the tests ask of Playwright's page, over WebDriver: it has no Playwright for a WebKit that nobody patched. */
import { setTimeout as wait } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { DrivenLocator } from './driven-locator.ts';
import { until } from './until.ts';
import type { Session } from './web-driver.ts';

const escapeKey = '\uE00C';

export class DrivenPage {
  readonly #session: Session;

  constructor(session: Session) {
    this.#session = session;
  }

  readonly keyboard = {
    press: async (key: 'Escape') => {
      const value = key === 'Escape' ? escapeKey : key;
      const actions = ['keyDown', 'keyUp'].map((type) => ({ type, value }));
      await this.#session.call('POST', '/actions', { actions: [{ type: 'key', id: 'keys', actions }] });
    },
  };

  async goto(url: string): Promise<void> {
    await this.#session.call('POST', '/url', { url });
    await this.#watch();
  }

  async reload(): Promise<void> {
    await this.#session.call('POST', '/refresh', {});
    await this.#watch();
  }

  async setViewportSize({ width, height }: { width: number; height: number }): Promise<void> {
    await this.#session.call('POST', '/window/rect', { x: 0, y: 0, width, height });
    await this.waitForFunction((wanted) => innerWidth === wanted, width);
  }

  /** The handles of all windows of the browser. */
  windows = (): Promise<readonly string[]> => this.#session.call('GET', '/window/handles');

  async openWindow(): Promise<string> {
    return (await this.#session.call<{ handle: string }>('POST', '/window/new', { type: 'window' })).handle;
  }

  async switchTo(handle: string): Promise<void> {
    await this.#session.call('POST', '/window', { handle });
  }

  locator = (css: string): DrivenLocator => new DrivenLocator(this.#session, [{ css }]);

  waitForTimeout = (ms: number): Promise<void> => wait(ms);

  /** What `run` gives in the page for `argument`; both are plain data, and what is thrown there is thrown here. */
  async evaluate<Argument, Result>(
    run: (argument: Argument) => Result | Promise<Result>,
    argument?: Argument,
  ): Promise<Result> {
    return this.#answer(`${run}`, argument);
  }

  async waitForFunction<Argument>(
    holds: (argument: Argument) => unknown,
    argument?: Argument,
  ): Promise<void> {
    // Judged in the page: an element, which is as good as yes, may be gone before it has come over.
    await until(() => this.#answer(`async (argument) => Boolean(await (${holds})(argument))`, argument), {
      what: `${holds}`,
    });
  }

  async #answer<Result>(run: string, argument: unknown): Promise<Result> {
    const script = `const [argument, done] = arguments;
      Promise.resolve(argument).then(${run}).then((is) => done({ is }), (error) => done({ error: String(error) }));`;
    const answer = await this.#session.call<{ is: Result; error?: string }>('POST', '/execute/async', {
      ...{ script, args: [argument ?? null] },
    });
    if (answer.error !== undefined) throw new Error(answer.error);
    return answer.is;
  }

  /** Errors of this page since it was loaded: uncaught ones, those on the console, breaches of the policy. */
  troubles = (): Promise<readonly string[]> =>
    this.evaluate(() => (window as unknown as { troubles?: string[] }).troubles ?? ['nobody watched']);

  /** WebDriver tells nothing of a console: the page keeps what goes wrong, from the moment that it is loaded. */
  #watch = (): Promise<void> =>
    this.evaluate(() => {
      const troubles: string[] = [];
      Object.assign(window, { troubles });
      addEventListener('error', ({ message }) => troubles.push(`uncaught: ${message}`));
      addEventListener('unhandledrejection', ({ reason }) => troubles.push(`uncaught: ${reason}`));
      addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
        troubles.push(`refused: ${violatedDirective} ${blockedURI}`),
      );
      const told = console.error;
      console.error = (...words) => {
        troubles.push(`console: ${words.join(' ')}`);
        told(...words);
      };
    });
}

/**
 * For the hands that other engines are driven by: they are written for Playwright's page, and use no more of it than is here.
 * What is not here throws by name, and so a test that needs it cannot pass.
 */
export const asPage = (page: DrivenPage): Page => page as unknown as Page;
