import { until } from './until.ts';
import { type ElementId, idOf, type Session } from './web-driver.ts';

/** How elements are come by: step after step, each from what the one before has found. */
type Step = { readonly css: string } | { readonly text: string } | { readonly nth: number };

/** Runs in the page. */
function find(steps: readonly Step[]): Element[] {
  let found: (Document | Element)[] = [document];
  for (const step of steps) {
    if ('css' in step) found = found.flatMap((from) => [...from.querySelectorAll(step.css)]);
    else if ('nth' in step) found = found.slice(step.nth).slice(0, 1);
    else found = found.filter((each) => each.textContent?.replace(/\s+/g, ' ').includes(step.text));
  }
  return [...new Set(found)] as Element[];
}

const isShown = (element: Element): boolean =>
  element.getClientRects().length > 0 && getComputedStyle(element).visibility === 'visible';

/** Elements as Playwright's locators find them: anew for each thing that is done, and waited for. */
export class DrivenLocator {
  readonly #session: Session;
  readonly #steps: readonly Step[];

  constructor(session: Session, steps: readonly Step[]) {
    this.#session = session;
    this.#steps = steps;
  }

  #then = (step: Step) => new DrivenLocator(this.#session, [...this.#steps, step]);
  locator = (css: string): DrivenLocator => this.#then({ css });
  filter = ({ hasText }: { hasText: string }): DrivenLocator => this.#then({ text: hasText });
  first = (): DrivenLocator => this.#then({ nth: 0 });
  last = (): DrivenLocator => this.#then({ nth: -1 });
  nth = (nth: number): DrivenLocator => this.#then({ nth });

  all = async (): Promise<DrivenLocator[]> =>
    Array.from({ length: await this.count() }, (_, nth) => this.nth(nth));
  count = (): Promise<number> => this.#run((found) => found.length);
  isVisible = (): Promise<boolean> => this.#run((found, shown) => found.some((each) => shown(each)));
  allInnerTexts = (): Promise<string[]> =>
    // biome-ignore lint/performance/useDomNodeTextContent: what a person reads is asked for
    this.#run((found) => found.map((each) => (each as HTMLElement).innerText));
  evaluateAll = <Result>(read: (found: Element[]) => Result): Promise<Result> => this.#run(read);

  async waitFor({ state = 'visible' }: { state?: 'attached' | 'detached' | 'visible' } = {}): Promise<void> {
    const isSo = async () => {
      if (state === 'visible') return this.isVisible();
      return (await this.count()) > 0 === (state === 'attached');
    };
    await until(isSo, { what: `${JSON.stringify(this.#steps)} ${state}` });
  }

  async textContent(): Promise<string | null> {
    await this.waitFor({ state: 'attached' });
    return this.#run(([found]) => found?.textContent ?? null);
  }

  async getAttribute(name: string): Promise<string | null> {
    await this.waitFor({ state: 'attached' });
    return this.#run(([found], _shown, wanted) => found?.getAttribute(String(wanted)) ?? null, name);
  }

  /** A press of the pointer, where nothing lies over the element. */
  async click(): Promise<void> {
    await this.#untilDone('click', {});
  }

  /** Choices whose box is drawn by a label are pressed there, as a finger would. */
  async check(): Promise<void> {
    await this.waitFor({ state: 'attached' });
    await this.#run(([found]) => (found as HTMLInputElement | undefined)?.click());
  }

  async fill(text: string): Promise<void> {
    await this.waitFor();
    await this.#untilDone('clear', {});
    await this.#untilDone('value', { text });
  }

  async selectOption({ label }: { label: string }): Promise<void> {
    await this.waitFor();
    await this.locator('option').filter({ hasText: label }).first().click();
  }

  /** Chooses the file at a path of this machine. */
  async setInputFiles(path: string): Promise<void> {
    await this.waitFor({ state: 'attached' });
    await this.#untilDone('value', { text: path });
  }

  /** Asks for `deed` on the element until the driver can do it: it may be on its way into view, or drawn anew. */
  async #untilDone(deed: 'click' | 'clear' | 'value', words: object): Promise<void> {
    let last: unknown;
    const isDone = async () => {
      const [found] = await this.#elements();
      if (!found) return false;
      return this.#session.call('POST', `/element/${idOf(found)}/${deed}`, words).then(
        () => true,
        (cause: unknown) => {
          last = cause;
          return false;
        },
      );
    };
    await until(isDone, { what: `${deed} ${JSON.stringify(this.#steps)}` }).catch((cause: unknown) => {
      throw new Error(`${cause}, last because of ${last}`, { cause });
    });
  }

  #elements = (): Promise<readonly ElementId[]> =>
    this.#session.call('POST', '/execute/sync', {
      script: `return (${find})(arguments[0]);`,
      args: [this.#steps],
    });

  /** What `read` gives in the page for all elements that are found there now. */
  #run<Result>(
    read: (found: Element[], shown: typeof isShown, argument: unknown) => Result,
    argument: unknown = null,
  ): Promise<Result> {
    const script = `return (${read})((${find})(arguments[0]), ${isShown}, arguments[1]);`;
    return this.#session.call('POST', '/execute/sync', { script, args: [this.#steps, argument] });
  }
}
