import type { Twin } from './twin.ts';

/**
 * A journal in files with the newest entries in the small storage of the browser besides. Measured in Chromium: on a
 * full disk it may take an app's database and files away together, from under its open window, and leaves only this.
 * What the journal lacks of the tail it gets back at a look. The tail is a help and never a hindrance: what it cannot
 * take is not missed.
 */
export function tailedTwin({ journal, tail }: { journal: Twin; tail: Twin }): Twin {
  const perhaps = (work: Promise<void>) => work.catch(() => undefined);

  /** Gives the journal what the tail has; the journal knows what of it is new. Whether there was anything to give. */
  async function mend(): Promise<boolean> {
    const entries = (await tail.parcel(await tail.heads())).entries;
    const acts = (await tail.look()).unsettled;
    const kept = new Set((await journal.look()).unsettled.map(({ act }) => act));
    if (entries.length > 0) await journal.add({ runs: [], entries });
    for (const act of acts) if (!kept.has(act.act)) await journal.keepAct(act);
    return entries.length > 0 || acts.length > 0;
  }

  return {
    async look() {
      const report = await journal.look();
      const mended = await mend().catch(() => false);
      return mended ? journal.look() : report;
    },
    async add(parcel) {
      // The tail first: it is written at once, and a journal that fails must not leave it behind.
      await perhaps(tail.add(parcel));
      await journal.add(parcel);
    },
    async keepAct(act) {
      await perhaps(tail.keepAct(act));
      await journal.keepAct(act);
    },
    async settleAct(act) {
      await perhaps(tail.settleAct(act));
      await journal.settleAct(act);
    },
    freshen: () => tail.freshen(),
    heads: journal.heads,
    parcel: journal.parcel,
    close() {
      journal.close();
      tail.close();
    },
  };
}
