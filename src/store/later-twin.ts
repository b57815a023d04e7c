import type { Twin } from './twin.ts';

/** A twin that is still being opened: what is asked of it waits. */
export function laterTwin(opening: Promise<Twin>): Twin {
  return {
    look: async () => (await opening).look(),
    add: async (entries) => (await opening).add(entries),
    keepAct: async (act) => (await opening).keepAct(act),
    settleAct: async (act) => (await opening).settleAct(act),
    links: async () => (await opening).links(),
    entries: async (links) => (await opening).entries(links),
    close: () => void opening.then((twin) => twin.close()),
  };
}
