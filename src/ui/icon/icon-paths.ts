import type { IconPath } from './icon-path.ts';
import type { lateIcons } from './late-icons.ts';

/**
 * Our own marks, cut as if with a chisel: a 32 × 32 field, strokes 3 wide, straight ends. A subpath in `solid` is
 * filled instead of stroked. Marks that point along the reading direction are listed in `turning`. Those that no first
 * screen shows stand in `late-icons.ts`.
 */
export const iconPaths = {
  // Places
  bench: {
    line: 'M2 27H30',
    solid: 'M3 6H9V25H3ZM11 11H19C23 11 25 13 25 15.5S23 20 19 20H11ZM27 13H30V25H27Z',
  },
  trays: { line: 'M3 7H29L26 14H6ZM3 19H29L26 26H6Z' },
  stores: { line: 'M4 4H28V28H4ZM4 16H28M13 10H19M13 22H19' },
  plan: { line: '', solid: 'M3 4H17V10H3ZM9 13H23V19H9ZM15 22H29V28H15Z' },
  yield: { line: 'M4 4V28H29M4 8H12V14H20V20H28' },
  day: { line: 'M3 25H29M8 25A8 8 0 0 1 24 25M16 6V11M4 12L8 16M28 12L24 16' },
  shelf: { line: 'M2 27H30M5 27V12A3.5 3.5 0 0 1 12 12V27M20 27V8A3.5 3.5 0 0 1 27 8V27M5 20H12M20 20H27' },
  'set-up': { line: 'M4 4H12V20H28V28H4ZM4 12H8M20 24V28' },

  // Acts
  pass: { line: 'M4 17L12 25L28 7' },
  flaw: { line: 'M16 3L28 10V22L16 29L4 22V10ZM16 3L12 12L19 17L14 29' },
  undo: { line: 'M11 5L4 12L11 19M4 12H20A7.5 7.5 0 0 1 20 27H10' },
  next: { line: 'M4 16H27M18 6L28 16L18 26' },
  back: { line: 'M28 16H5M14 6L4 16L14 26' },
  search: { line: 'M4 13A9 9 0 1 0 22 13A9 9 0 1 0 4 13M19.5 19.5L29 29' },
  scan: { line: 'M4 12V4H12M20 4H28V12M28 20V28H20M12 28H4V20M9 16H23' },
  retry: { line: 'M26 6V14H18M25.5 13A11 11 0 1 0 27 19' },
  export: { line: 'M16 3V20M8 12L16 20L24 12M4 20V28H28V20' },
  wipe: { line: 'M16 4C20 10 25 14 25 20A9 9 0 0 1 7 20C7 14 12 10 16 4Z' },
  more: { line: '', solid: 'M3 13H9V19H3ZM13 13H19V19H13ZM23 13H29V19H23Z' },
  cross: { line: 'M5 5L27 27M27 5L5 27' },

  // States
  check: { line: 'M4 17L12 25L28 7' },
  warn: { line: 'M16 3L30 28H2ZM16 12V19M16 22V25' },
  info: { line: 'M4 4H28V28H4ZM16 14V24M16 8V11' },
  hold: { line: 'M23 4H7V28H23M23 4V12M18 12H28M23 28V20M18 20H28' },
  person: { line: 'M10.5 10A5.5 5.5 0 1 0 21.5 10A5.5 5.5 0 1 0 10.5 10M4 29C4 21 9 19 16 19S28 21 28 29' },
  lock: { line: 'M5 14H27V28H5ZM10 14V10A6 6 0 0 1 22 10V14M16 19V23' },
} as const satisfies Record<string, IconPath>;

/** The name of a mark. */
export type IconName = keyof typeof iconPaths | keyof typeof lateIcons;

/** Marks that point along the reading direction and turn round where people read from right to left. */
export const turning: ReadonlySet<IconName> = new Set([
  'undo',
  'next',
  'back',
  'split',
  'join',
  'erase',
  'enter',
]);
