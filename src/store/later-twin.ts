import type { Twin } from './twin.ts';

/** A twin that is still being opened: what is asked of it waits. */
export function laterTwin(opening: Promise<Twin>): Twin {
  return {
    look: async () => (await opening).look(),
    add: async (parcel) => (await opening).add(parcel),
    keepAct: async (act) => (await opening).keepAct(act),
    settleAct: async (act) => (await opening).settleAct(act),
    freshen: async () => (await opening).freshen(),
    heads: async () => (await opening).heads(),
    parcel: async (heads) => (await opening).parcel(heads),
    close: () => void opening.then((twin) => twin.close()),
  };
}
