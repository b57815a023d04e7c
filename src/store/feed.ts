/** Tells the other windows of this tablet that the log has grown. They read for themselves what is new. */
export interface Feed {
  readonly tell: () => void;
  readonly onNews: (listen: () => void) => () => void;
  readonly close: () => void;
}

/** Windows that share a store share a feed of the same name; without BroadcastChannel each is on its own until it is shown again. */
export function windowFeed(name: string): Feed {
  if (typeof BroadcastChannel === 'undefined')
    return { tell: () => {}, onNews: () => () => {}, close: () => {} };
  const channel = new BroadcastChannel(`log of ${name}`);
  return {
    tell: () => channel.postMessage('grown'),
    onNews(listen) {
      channel.addEventListener('message', listen);
      return () => channel.removeEventListener('message', listen);
    },
    close: () => channel.close(),
  };
}

/** Tells every window that has the store of this name open, this one too. */
export function tellWindows(name: string): void {
  const feed = windowFeed(name);
  feed.tell();
  feed.close();
}
