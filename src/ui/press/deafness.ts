/** Whether the page answers to nothing for now, while its screen is wiped: dirt, droplets and a leaning hand tap too. */
let wipers = 0;
const deafTo = ['keydown', 'keyup', 'click', 'contextmenu', 'wheel'] as const;

export const isDeafNow = (): boolean => wipers > 0;

const hush = (event: Event): void => {
  event.preventDefault();
  event.stopPropagation();
};

/** Makes the page deaf to keys, clicks and gestures until the returned function is called. */
export const goDeaf = (): (() => void) => {
  wipers += 1;
  for (const kind of deafTo) document.addEventListener(kind, hush, { capture: true, passive: false });
  return () => {
    wipers -= 1;
    if (wipers === 0) for (const kind of deafTo) document.removeEventListener(kind, hush, { capture: true });
  };
};
