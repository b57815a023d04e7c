import type { manualWords } from '../../../words/manual-words.ts';
import { hrefOf } from '../address.ts';
import bench from './pictures/bench.webp';
import check from './pictures/check.webp';
import copies from './pictures/copies.webp';
import counts from './pictures/counts.webp';
import curing from './pictures/curing.webp';
import flaws from './pictures/flaws.webp';
import plan from './pictures/plan.webp';
import shelf from './pictures/shelf.webp';
import start from './pictures/start.webp';
import stores from './pictures/stores.webp';
import trays from './pictures/trays.webp';
import trouble from './pictures/trouble.webp';
import variants from './pictures/variants.webp';
import yields from './pictures/yield.webp';

export type ChapterName = keyof (typeof manualWords)['chapters'];

interface Chapter {
  readonly name: ChapterName;
  /** The address of its picture. */
  readonly picture: string;
  /** The place that it tells of. */
  readonly href: string;
}

/** All pictures are of one size, in pixels: `.ci/take-pictures.mjs` cuts them so. */
export const pictureSize = { width: 800, height: 600 } as const;

/** The chapters in the order of the job. */
export const chapters: readonly Chapter[] = [
  { name: 'start', picture: start, href: hrefOf('set-up', 'route') },
  { name: 'variants', picture: variants, href: hrefOf('set-up', 'variants') },
  { name: 'trays', picture: trays, href: hrefOf('trays', 'new') },
  { name: 'bench', picture: bench, href: hrefOf('bench') },
  { name: 'flaws', picture: flaws, href: hrefOf('set-up', 'reasons') },
  { name: 'curing', picture: curing, href: hrefOf('bench', 'curing') },
  { name: 'check', picture: check, href: hrefOf('set-up', 'stages') },
  { name: 'counts', picture: counts, href: hrefOf('day') },
  { name: 'stores', picture: stores, href: hrefOf('stores') },
  { name: 'yield', picture: yields, href: hrefOf('yield') },
  { name: 'plan', picture: plan, href: hrefOf('plan', 'forecast') },
  { name: 'shelf', picture: shelf, href: hrefOf('shelf') },
  { name: 'copies', picture: copies, href: hrefOf('set-up', 'files') },
  { name: 'trouble', picture: trouble, href: 'rescue.html' },
];

/** Where a chapter can be read, or the contents of all. */
export const manualHref = (name?: ChapterName) => hrefOf('set-up', 'manual', ...(name ? [name] : []));

/** The chapter that an address names, if it is one. */
export const chapterIn = ([section, name]: readonly string[]): ChapterName | undefined =>
  section === 'manual' ? chapters.find((chapter) => chapter.name === name)?.name : undefined;
