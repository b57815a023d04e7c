import type { IconPath } from './icon-path.ts';

/** The marks that come after the first screen, drawn as those in `icon-paths.ts`. */
export const lateIcons = {
  split: { line: 'M3 16H12L20 8H27M12 16L20 24H27M22 3L28 8L22 13M22 19L28 24L22 29' },
  join: { line: 'M4 8H12L20 16H27M4 24H12L20 16M22 10L28 16L22 22' },
  recount: { line: 'M6 5V27M13 5V27M20 5V27M27 5V27M2 23L30 9' },
  pencil: { line: 'M5 27L7 19L22 4L28 10L13 25ZM18 8L24 14' },
  import: { line: 'M16 20V4M8 12L16 4L24 12M4 20V28H28V20' },
  erase: { line: 'M11 6H29V26H11L3 16ZM15 11L24 21M24 11L15 21' },
  enter: { line: 'M27 5V17H6M14 8L5 17L14 26' },
  camera: { line: 'M3 9H10L12 5H20L22 9H29V27H3ZM10 18A6 6 0 1 0 22 18A6 6 0 1 0 10 18' },
  label: { line: 'M4 4H16L29 17L17 29L4 16ZM10 8A2 2 0 1 0 10 12A2 2 0 1 0 10 8' },
  up: { line: 'M5 22L16 10L27 22' },
  down: { line: 'M5 10L16 22L27 10' },
  plus: { line: 'M16 4V28M4 16H28' },
  minus: { line: 'M4 16H28' },
  book: { line: 'M16 9L13 6H3V26H13L16 29L19 26H29V6H19ZM16 9V29' },
  pause: { line: '', solid: 'M6 5H13V27H6ZM19 5H26V27H19Z' },
} as const satisfies Record<string, IconPath>;
