import type { Link } from '../domain/log/chain.ts';
import type { Twin } from './twin.ts';

/**
 * A journal in files with the newest entries in the small storage of the browser besides. Measured in Chromium: on a
 * full disk it may take an app's database and files away together, from under its open window, and leaves only this.
 * What the journal lacks of the tail it gets back at a look. The tail is a help and never a hindrance: what it cannot
 * take is not missed.
 */
export function tailedTwin({ journal, tail }: { journal: Twin; tail: Twin }): Twin {
  const perhaps = (work: Promise<void>) => work.catch(() => undefined);

  async function lostLinks(): Promise<readonly Link[]> {
    const links = await tail.links();
    const held = new Set((await journal.entries(links)).map(({ link }) => link));
    return links.filter((link) => !held.has(link));
  }

  async function mend(): Promise<boolean> {
    const lost = await lostLinks();
    const acts = (await tail.look()).unsettled;
    const kept = new Set((await journal.look()).unsettled.map(({ act }) => act));
    if (lost.length > 0) await journal.add(await tail.entries(lost));
    for (const act of acts) if (!kept.has(act.act)) await journal.keepAct(act);
    return lost.length > 0 || acts.length > 0;
  }

  return {
    async look() {
      const report = await journal.look();
      const mended = await mend().catch(() => false);
      return mended ? journal.look() : report;
    },
    async add(entries) {
      // The tail first: it is written at once, and a journal that fails must not leave it behind.
      await perhaps(tail.add(entries));
      await journal.add(entries);
    },
    async keepAct(act) {
      await perhaps(tail.keepAct(act));
      await journal.keepAct(act);
    },
    async settleAct(act) {
      await perhaps(tail.settleAct(act));
      await journal.settleAct(act);
    },
    links: journal.links,
    entries: journal.entries,
    close() {
      journal.close();
      tail.close();
    },
  };
}
