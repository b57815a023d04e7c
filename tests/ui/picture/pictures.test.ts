// @vitest-environment happy-dom
/**
 * Pictures as files, read back by an XML parser: what makes a file well-formed is the XML recommendation (1.0, fifth edition,
 * sections 2.2 and 2.4), what it may refer to is SVG 1.1. The tests of the browser read one with Chromium's parser too.
 */
import { describe, expect, test } from 'vitest';
import { drawingOf } from '../../../src/ui/picture/drawing.ts';
import type { Picture, PictureBody } from '../../../src/ui/picture/picture.ts';
import { svgOf } from '../../../src/ui/picture/svg.ts';
import { someChart, someLooks } from '../chart/some-chart.ts';

/** A name that a person may give to anything. */
const name = `Plum <b>&amp; "ash" ]]> 'x' & co >`;

const tones = { ground: '#efe3c8', line: '#7d6640' };
const bodies: Readonly<Record<PictureBody['kind'], PictureBody>> = {
  chart: {
    kind: 'chart',
    chart: someChart({
      band: { low: [50, 60, 70], high: [70, 80, 950], label: name },
      marks: [{ at: 20, label: name }],
      y: { label: name, show: (value) => `${value} %`, least: 0, most: 100 },
      series: [
        { key: 'good', label: name, values: [60, null, 90], drawn: 'line-points', tone: 'plain' },
        { key: 'bars', label: 'Bars', values: [10, 20, 30], drawn: 'bars', tone: 'flaw' },
        { key: 'steps', label: 'Steps', values: [15, 25, 35], drawn: 'steps', tone: 'copper' },
      ],
    }),
  },
  bars: {
    kind: 'bars',
    most: 1,
    ofWhole: true,
    bars: [
      { label: name, value: 0.4, shown: '40 %', interval: [0.3, 0.5], running: { share: 1, shown: name } },
    ],
  },
  table: {
    kind: 'table',
    table: {
      corner: name,
      rows: [{ id: 'r', label: name }],
      cols: [
        { id: 'c', label: name },
        { id: 'd', label: 'd' },
      ],
      most: 1,
      cell: (_, col) => (col === 'c' ? { share: 0.5, shown: '50 %', detail: '1 of 2', name } : null),
    },
  },
  flow: {
    kind: 'flow',
    nothing: 'nothing',
    stages: [
      { id: 's', name, total: 3, parts: [{ id: 'p', count: 3, label: name, name, pattern: 'burl', tones }] },
      { id: 'e', name: 'Empty', total: 0, parts: [] },
    ],
  },
};

const looks = { ...someLooks, family: `"Some Face", sans-serif` };
const drawn = (body: PictureBody, more: Partial<Picture> = {}) =>
  drawingOf(
    { title: name, lead: 'What to know', foot: 'The shop, a day', body, ...more },
    { looks, widthOf: (text, size) => 0.6 * size * text.length },
  );

function parsed(svg: string): Document {
  const read = new DOMParser().parseFromString(svg, 'image/svg+xml');
  expect(read.querySelector('parsererror')).toBeNull();
  return read as unknown as Document;
}

const textsOf = (read: Document) => [...read.querySelectorAll('text')].map((each) => each.textContent);

describe.each(Object.entries(bodies))('a picture of a %s', (_, body) => {
  const svg = svgOf(drawn(body));
  const read = parsed(svg);

  test('is an SVG with its title and what it shows in words', () => {
    expect(read.documentElement.namespaceURI).toBe('http://www.w3.org/2000/svg');
    expect(read.querySelector('title')?.textContent).toBe(name);
    const description = read.querySelector('desc')?.textContent ?? '';
    expect(description).toContain('What to know');
    expect(description.split('\n').length).toBeGreaterThan(2);
  });

  test('holds every sign of a name as a text, and none of it as markup', () => {
    expect(read.querySelectorAll('b')).toHaveLength(0);
    const all = textsOf(read).join(' ');
    for (const word of name.split(' ')) expect(all).toContain(word);
    expect(textsOf(read)).toContain('The shop, a day');
  });

  test('refers to nothing outside itself, and to nothing that it has not', () => {
    expect(svg).not.toMatch(/href|@import|@font-face|<image|<style|<script|<foreignObject/);
    for (const [address] of svg.replace('http://www.w3.org/2000/svg', '').matchAll(/\w+:\/\//g))
      expect.fail(`refers to ${address}`);
    const ids = new Set([...read.querySelectorAll('[id]')].map(({ id }) => id));
    const referred = [...svg.matchAll(/url\((.*?)\)/g)].map(([, to]) => to);
    for (const to of referred) expect([...ids].map((id) => `#${id}`)).toContain(to);
    expect(read.documentElement.getAttribute('font-family')).toBe('"Some Face", sans-serif');
  });

  test('has no number that is none, and lies within its own size', () => {
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    const { width, height, parts } = drawn(body);
    for (const { left, top, strokes } of parts)
      for (const stroke of strokes) {
        if (stroke.kind !== 'text') continue;
        expect(left + stroke.x).toBeGreaterThanOrEqual(0);
        expect(left + stroke.x).toBeLessThanOrEqual(width);
        expect(top + stroke.y).toBeGreaterThan(0);
        expect(top + stroke.y).toBeLessThan(height);
      }
  });
});

test('what XML cannot write does not make the file unreadable', () => {
  const spoilt = `bell \u0007, half \ud83d, nought \u0000, whole 😀, \uffff`;
  const read = parsed(svgOf(drawn(bodies.bars, { title: spoilt })));
  expect(read.querySelector('title')?.textContent).toBe(
    'bell \ufffd, half \ufffd, nought \ufffd, whole 😀, \ufffd',
  );
});

test('a gap in the values is a gap in the line, and what is beyond the scale is cut off at the field', () => {
  const { parts } = drawn(bodies.chart);
  const lines = parts.flatMap(({ strokes }) => strokes).filter((stroke) => stroke.kind === 'path');
  const good = lines.find(({ line, within }) => line === looks.plain && within);
  const places = good?.d.match(/[ML]/g);
  expect(places).toEqual(['M', 'M']);
  expect(good?.within).toBeDefined();
  expect(good?.within?.height).toBeGreaterThan(100);
});

test('each area reaches down to the one below, and its name is written where it is highest', () => {
  const chart = someChart({
    series: [
      { key: 'low', label: 'Low', values: [0, 10, 40], told: [0, 10, 40], drawn: 'area', tone: 'saved' },
      { key: 'high', label: 'High', values: [50, 50, 50], told: [50, 40, 10], drawn: 'area', tone: 'copper' },
      { key: 'thin', label: 'Thin', values: [50, 50, 51], told: [0, 0, 1], drawn: 'area', tone: 'flaw' },
    ],
  });
  const drawing = drawn({ kind: 'chart', chart });
  const strokes = drawing.parts.flatMap((part) => part.strokes);
  const planes = strokes.filter((stroke) => stroke.kind === 'path' && stroke.cover !== undefined);
  expect(planes).toHaveLength(3);
  const written = strokes.flatMap((stroke) => (stroke.kind === 'text' && stroke.rim ? [stroke] : []));
  expect(written.map(({ text }) => text)).toEqual(['Low', 'High']);
  const [low, high] = written;
  // The low one is highest at the end, the high one at the start.
  expect(low?.x).toBeGreaterThan(high?.x ?? Number.POSITIVE_INFINITY);
  expect(drawing.description).toContain('w30: Low 40 %, High 10 %, Thin 1 %');
});
