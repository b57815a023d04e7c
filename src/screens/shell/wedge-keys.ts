import {
  type FieldWatch,
  hear,
  hearInField,
  lifted,
  longestPause,
  noWedge,
  type Wedge,
  type WedgeKey,
  type WedgeStep,
  waited,
} from '../../app/wedge.ts';
import { isDeafNow } from '../../ui/press/deafness.ts';

type Field = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

/** Listens to keys before anything else of the page does, until the returned function is called. */
export function listenToWedge(onRead: (text: string) => void): () => void {
  let wedge: Wedge = noWedge;
  let watch: FieldWatch = noWedge;
  let before: { readonly field: Field; readonly value: string } | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** Keys that were held back and act now: they have been heard. */
  const heard = new WeakSet<Event>();
  /** Where they were pressed. */
  let aim: Element = document.body;

  function act({ key, at }: WedgeKey): void {
    const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true });
    // What tells a bounce from two presses goes by when the key went down.
    Object.defineProperty(event, 'timeStamp', { value: at });
    heard.add(event);
    (aim.isConnected ? aim : document.body).dispatchEvent(event);
  }

  function take(step: WedgeStep): void {
    wedge = step.wedge;
    clearTimeout(timer);
    // The clock of events and that of the timer may be apart; the pause is longer than either matters.
    if (wedge.held.length > 0)
      timer = setTimeout(() => take(waited(wedge, wedge.last + longestPause)), longestPause);
    for (const key of step.released) act(key);
  }

  function inField(event: KeyboardEvent, field: Field): void {
    const step = hearInField(watch, { key: event.key, at: event.timeStamp });
    watch = step.watch;
    if (step.begins) before = { field, value: field.value };
    if (step.read === undefined) return;
    swallow(event);
    if (before) putBack(before);
    onRead(step.read);
  }

  function elsewhere(event: KeyboardEvent): void {
    const step = hear(wedge, { key: event.key, at: event.timeStamp });
    if (!step.acts) swallow(event);
    if (step.released.length > 0) take({ ...step, wedge: noWedge });
    if (event.target instanceof Element) aim = event.target;
    take({ ...step, released: [] });
    if (step.read !== undefined) onRead(step.read);
  }

  const watchedElsewhere = (field: Field | undefined) => before !== undefined && before.field !== field;
  const down = (event: KeyboardEvent) => {
    if (heard.has(event) || event.repeat || event.isComposing || isDeafNow()) return;
    const field = fieldOf(event.target);
    const isCommand = event.ctrlKey || event.metaKey || event.altKey;
    if (field || isCommand) take({ wedge: noWedge, released: wedge.held, acts: true });
    if (isCommand || watchedElsewhere(field)) watch = noWedge;
    if (isCommand) return;
    if (field) inField(event, field);
    else elsewhere(event);
  };
  const up = (event: KeyboardEvent) => {
    const step = lifted(wedge, { key: event.key, at: event.timeStamp });
    if (step.wedge !== wedge) take(step);
  };

  addEventListener('keydown', down, { capture: true });
  addEventListener('keyup', up, { capture: true });
  return () => {
    clearTimeout(timer);
    removeEventListener('keydown', down, { capture: true });
    removeEventListener('keyup', up, { capture: true });
  };
}

function swallow(event: KeyboardEvent): void {
  event.preventDefault();
  event.stopImmediatePropagation();
}

/** Buttons, boxes and the like take no text: what is typed on them is typed nowhere. */
const textless = /^(button|checkbox|radio|submit|reset|range|color|file|image)$/;

function fieldOf(target: EventTarget | null): Field | undefined {
  if (target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement) return target;
  return target instanceof HTMLInputElement && !textless.test(target.type) ? target : undefined;
}

/** Gives a field the text that it had before a code reader typed into it, and lets its form know. */
function putBack({ field, value }: { readonly field: Field; readonly value: string }): void {
  if (field.value === value) return;
  field.value = value;
  for (const type of ['input', 'change']) field.dispatchEvent(new Event(type, { bubbles: true }));
}
