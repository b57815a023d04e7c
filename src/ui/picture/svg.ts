import { type Grain, grains } from '../flow/grain-patterns.ts';
import {
  type Box,
  boxPath,
  type Drawing,
  type DrawnPath,
  type DrawnText,
  rimWidth,
  type Stroke,
} from './strokes.ts';

const marks: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** What XML 1.0 has no way to write (section 2.2): a single one makes the whole file unreadable. */
const unwritable =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not get through
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** A text as XML has it, between tags or in an attribute. */
const escaped = (text: string): string =>
  text.replace(unwritable, '\ufffd').replace(/[&<>"']/g, (mark) => marks[mark] ?? mark);

type Attributes = Readonly<Record<string, string | number | undefined>>;

const tag = (name: string, attributes: Attributes, inside = ''): string => {
  const said = Object.entries(attributes)
    .flatMap(([key, value]) => (value === undefined ? [] : [` ${key}="${escaped(String(value))}"`]))
    .join('');
  return inside === '' ? `<${name}${said}/>` : `<${name}${said}>${inside}</${name}>`;
};

/** Two places behind the point are as fine as any printer is. */
const rounded = (path: string): string =>
  path.replace(/-?\d+\.\d+(?:e-?\d+)?/g, (number) => String(Math.round(100 * Number(number)) / 100));

/** Grains by what they are made of: those that look alike are one pattern of the file. */
const grainKey = ({ pattern, tones }: NonNullable<DrawnPath['grain']>): string =>
  `${pattern} ${tones.ground} ${tones.line}`;

/** Things that strokes share, by a name for each, and the ids that the file gives them. */
interface Shared {
  readonly grains: ReadonlyMap<
    string,
    { readonly id: string; readonly grain: NonNullable<DrawnPath['grain']> }
  >;
  readonly frames: ReadonlyMap<string, { readonly id: string; readonly frame: Box }>;
}

const sharedOf = (strokes: readonly Stroke[]): Shared => {
  const grainsOf = new Map<string, { id: string; grain: NonNullable<DrawnPath['grain']> }>();
  const frames = new Map<string, { id: string; frame: Box }>();
  for (const stroke of strokes) {
    if (stroke.kind === 'text') continue;
    const { grain, within } = stroke;
    const key = grain && grainKey(grain);
    if (grain && key && !grainsOf.has(key)) grainsOf.set(key, { id: `grain-${grainsOf.size + 1}`, grain });
    const frame = within && boxPath(within);
    if (within && frame && !frames.has(frame))
      frames.set(frame, { id: `frame-${frames.size + 1}`, frame: within });
  }
  return { grains: grainsOf, frames };
};

const definitions = ({ grains: used, frames }: Shared): string =>
  [
    ...[...used.values()].map(({ id, grain: { pattern, tones } }) =>
      tag(
        'pattern',
        { id, width: 24, height: 24, patternUnits: 'userSpaceOnUse' },
        tile(grains[pattern], tones),
      ),
    ),
    ...[...frames.values()].map(({ id, frame }) =>
      tag('clipPath', { id }, tag('path', { d: rounded(boxPath(frame)) })),
    ),
  ].join('');

const tile = ({ lines, spots, width }: Grain, { ground, line }: { ground: string; line: string }): string =>
  tag('rect', { width: 24, height: 24, fill: ground }) +
  (lines ? tag('path', { d: lines, fill: 'none', stroke: line, 'stroke-width': width }) : '') +
  (spots ? tag('path', { d: spots, fill: line }) : '');

const refer = (shared: { readonly id: string } | undefined): string | undefined =>
  shared && `url(#${shared.id})`;

const pathTag = (path: DrawnPath, shared: Shared): string =>
  tag('path', {
    d: rounded(path.d),
    fill: (path.grain && refer(shared.grains.get(grainKey(path.grain)))) ?? path.fill ?? 'none',
    'fill-opacity': path.cover,
    stroke: path.line,
    'stroke-width': path.line && (path.width ?? 1),
    'stroke-dasharray': path.dash?.length ? path.dash.join(' ') : undefined,
    'stroke-linejoin': path.line && 'round',
    'clip-path': path.within && refer(shared.frames.get(boxPath(path.within))),
  });

const bareText = (
  { x, y, text, size, weight, fill, at }: Omit<DrawnText, 'rim'>,
  more: Attributes = {},
): string =>
  tag(
    'text',
    {
      x: Math.round(100 * x) / 100,
      y: Math.round(100 * y) / 100,
      'font-size': size,
      'font-weight': weight,
      fill,
      'text-anchor': at === 'start' ? undefined : at,
      ...more,
    },
    escaped(text),
  );

/** The rim is a text of its own beneath: SVG 1.1 paints the line of a text over its fill. */
const textTag = ({ rim, ...text }: DrawnText): string => {
  const round = { stroke: rim, 'stroke-width': rimWidth, 'stroke-linejoin': 'round', 'aria-hidden': 'true' };
  return rim ? bareText({ ...text, fill: rim }, round) + bareText(text) : bareText(text);
};

/** A drawing as an SVG 1.1 file that needs nothing beside itself. */
export const svgOf = (drawing: Drawing): string => {
  const { width, height, parts } = drawing;
  const shared = sharedOf(parts.flatMap(({ strokes }) => strokes));
  const defs = definitions(shared);
  const written = (stroke: Stroke) => (stroke.kind === 'path' ? pathTag(stroke, shared) : textTag(stroke));
  const inside = [
    tag('title', { id: 'title' }, escaped(drawing.title)),
    tag('desc', { id: 'description' }, escaped(drawing.description)),
    ...(defs === '' ? [] : [tag('defs', {}, defs)]),
    tag('rect', { width, height, fill: drawing.paper }),
    ...parts.map(({ left, top, strokes }) =>
      tag('g', { transform: `translate(${left} ${rounded(String(top))})` }, strokes.map(written).join('\n')),
    ),
  ];
  const root = {
    xmlns: 'http://www.w3.org/2000/svg',
    version: '1.1',
    width,
    height,
    viewBox: `0 0 ${width} ${height}`,
    'font-family': drawing.family,
    role: 'img',
    'aria-labelledby': 'title description',
  };
  return `<?xml version="1.0" encoding="UTF-8"?>\n${tag('svg', root, `\n${inside.join('\n')}\n`)}\n`;
};
