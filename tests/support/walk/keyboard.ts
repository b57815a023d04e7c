import type { Locator, Page } from 'playwright-core';
import { focusStop } from './focus-stop.ts';
import { at, breathe, idOf, placeLink, type Walker } from './walker.ts';

/** So many stops on the way to one element mean that it cannot be reached. */
const mostStops = 120;

export interface Keyboard extends Walker {
  /** Stops that had no name or no ring or were out of sight, and focuses that were lost; one line each. */
  readonly faults: readonly string[];
}

/**
 * One who has a keyboard and no pointer: goes on by Tab and back by Shift+Tab, whichever leads there without leaving the
 * page, and looks at every stop. The stage screen has keys of its own, which are shown on its buttons.
 */
export function keyboard(page: Page): Keyboard {
  let presses = 0;
  const faults: string[] = [];
  const strike = async (key: string): Promise<void> => {
    await page.keyboard.press(key);
    presses += 1;
  };
  const look = async (towards: string): Promise<void> => {
    const stop = await page.evaluate(focusStop);
    if (!stop) return;
    const wrong = [!stop.name && 'no name', !stop.ringed && 'no ring', !stop.seen && 'out of sight'];
    for (const each of wrong) if (each) faults.push(`${each}: ${stop.what.trim()}, on the way to ${towards}`);
  };
  const focus = async (target: Locator): Promise<void> => {
    await target.waitFor();
    const id = (await idOf(target)) || String(target);
    if (presses > 0 && (await page.evaluate(focusStop)) === undefined) faults.push(`focus lost before ${id}`);
    for (let stops = 0; stops < mostStops; stops += 1) {
      const way = await target.evaluate(wayTo);
      if (way === 'there') return;
      await strike(way === 'back' ? 'Shift+Tab' : 'Tab');
      await look(id);
    }
    throw new Error(`${id} is not reached by Tab`);
  };
  const press = async (target: Locator): Promise<void> => {
    const id = await idOf(target);
    await focus(target);
    await strike('Enter');
    await breathe(page, id);
  };
  const act = async (id: string): Promise<void> => {
    const key = await keyOf(page, id);
    if (key === undefined) return press(at(page, id));
    await strike(key);
    await breathe(page, id);
  };
  return {
    page,
    faults,
    count: () => presses,
    async go(place) {
      if (!(await page.evaluate(isInPlaces))) await press(at(page, 'to-places'));
      await press(placeLink(page, place));
    },
    press,
    act,
    async save(id) {
      if (!(await page.evaluate(isInField))) return press(at(page, id));
      await strike('Enter');
      await breathe(page, id);
    },
    async type(field, text) {
      await focus(field);
      const isDate = (await field.getAttribute('type')) === 'date';
      for (const sign of isDate ? daysFirst(text) : text) await strike(sign);
    },
    async pick(choice) {
      const taken = choice.locator('xpath=ancestor::fieldset').locator('input:checked');
      await focus(taken);
      for (let moves = 0; !(await choice.locator('input').isChecked()); moves += 1) {
        if (moves > mostStops) throw new Error('the choice is not reached by arrow keys');
        await strike('ArrowRight');
      }
    },
    async passAll(pieces) {
      for (let piece = 0; piece < pieces; piece += 1) await act('pass');
    },
  };
}

/** The key of an act of the stage screen as its button says it; undefined when it has none. */
export async function keyOf(page: Page, id: string): Promise<string | undefined> {
  // Its sign is drawn on the button, and no name of it is said.
  if (id === 'undo' || id === 'flaw-cancel') return 'Backspace';
  const button = at(page, id);
  await button.waitFor();
  return (await button.getAttribute('aria-keyshortcuts')) ?? undefined;
}

/** Day and month are the same number in the walk: a browser asks for them in the order of its own language. */
const daysFirst = (date: string): string => date.split('-').toReversed().join('');

/** Which way an element lies from where the focus is, in the order of the page. Runs in the page. */
function wayTo(target: Element): 'there' | 'on' | 'back' {
  const now = document.activeElement;
  if (now === null || now === document.body) return 'on';
  if (now === target || target.contains(now)) return 'there';
  const isBehind = target.compareDocumentPosition(now) & Node.DOCUMENT_POSITION_FOLLOWING;
  return isBehind ? 'back' : 'on';
}

/** Run in the page. */
const isInField = (): boolean => document.activeElement instanceof HTMLInputElement;
const isInPlaces = (): boolean => document.activeElement?.closest('nav.places') != null;
