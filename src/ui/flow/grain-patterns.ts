/** The drawn grains by which woods are told apart; each is a set of strokes on a tile of 24 by 24. */
export type GrainName =
  | 'straight'
  | 'ray-fleck'
  | 'ring-porous'
  | 'cathedral'
  | 'burl'
  | 'curl'
  | 'spalt'
  | 'stripe'
  | 'interlocked'
  | 'pore-dots';

export interface Grain {
  /** Stroked lines, as an SVG path. */
  readonly lines?: string;
  /** Filled spots, as an SVG path. */
  readonly spots?: string;
  readonly width: number;
}

const dot = (x: number, y: number, r: number) =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;

export const grains: Readonly<Record<GrainName, Grain>> = {
  straight: { lines: 'M0 4H24M0 12H24M0 20H24', width: 2 },
  'ray-fleck': { lines: 'M2 5H9M14 5H20M7 12H15M20 12H24M0 12H2M3 19H8M13 19H22', width: 4 },
  'ring-porous': {
    lines: 'M0 21H24',
    spots: [3, 9, 15, 21]
      .map((x) => dot(x, 5, 2))
      .concat([6, 12, 18].map((x) => dot(x, 12, 1.4)))
      .join(''),
    width: 3,
  },
  cathedral: { lines: 'M1 24L12 3L23 24M6 24L12 12L18 24', width: 2.5 },
  burl: { lines: 'M12 7a5 5 0 1 0 .1 0M12 2a10 10 0 1 0 .1 0', spots: dot(12, 12, 2.2), width: 2 },
  curl: { lines: 'M4 0C10 6 -2 18 4 24M12 0C18 6 6 18 12 24M20 0C26 6 14 18 20 24', width: 2.5 },
  spalt: { lines: 'M0 7L5 3L9 10L15 5L19 11L24 7M0 20L7 15L12 22L18 16L24 20', width: 2.5 },
  stripe: { lines: 'M6 0V24M18 0V24', width: 6 },
  interlocked: { lines: 'M0 6L6 0M0 18L18 0M6 24L24 6M18 24L24 18M0 12L12 24', width: 2 },
  'pore-dots': {
    spots:
      dot(5, 6, 2) + dot(17, 6, 2) + dot(11, 14, 2) + dot(22, 15, 1.6) + dot(4, 20, 1.6) + dot(17, 21, 2),
    width: 0,
  },
};

export const grainNames = Object.keys(grains) as readonly GrainName[];

/** Ground and line of a wood, as CSS colours. */
export interface GrainTones {
  readonly ground: string;
  readonly line: string;
}

/** Ready pairs, from pale to dark. */
export const grainTones: Readonly<Record<'pale' | 'honey' | 'red' | 'brown' | 'dark' | 'olive', GrainTones>> =
  {
    pale: { ground: '#efe3c8', line: '#7d6640' },
    honey: { ground: '#eac78c', line: '#7d5220' },
    red: { ground: '#dd9c82', line: '#6b2419' },
    brown: { ground: '#b58a62', line: '#402713' },
    dark: { ground: '#6d4a33', line: '#f0dcc0' },
    olive: { ground: '#cfc78a', line: '#535020' },
  };
