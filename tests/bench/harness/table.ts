import type { Row } from './row.ts';

/** A row for the console: what was measured, beside what, and whether it holds. */
export function linesOf({
  id,
  work,
  unit,
  ours,
  limit,
  peers,
  ratio,
  bar,
  ok,
  spread: [least, most],
}: Row): readonly string[] {
  const figure = (value: number) => `${short(value)} ${unit}`;
  const verdict = bar.length === 0 ? '' : ok ? 'ok' : 'MISSED';
  const others = [
    ...(limit === null ? [] : [`limit ${figure(limit)}, ours ${times(ratio.limit)} of it`]),
    ...Object.entries(peers).map(([name, value]) => `${name} ${figure(value)}, ${times(ratio[name])} ours`),
  ];
  return [
    `${id.padEnd(20)} ${figure(ours).padEnd(12)} (${short(least)}–${short(most)})`.padEnd(56) + verdict,
    `  ${work}`,
    ...others.map((line) => `  ${line}`),
    ...(bar.length === 0 ? [] : [`  bar: ${bar.join('; ')}`]),
  ];
}

const times = (ratio = Number.NaN) => `${short(ratio)} ×`;

/** Three significant figures; whole numbers stay whole. */
function short(value: number): string {
  return Math.abs(value) >= 100 ? value.toFixed(0) : Number(value.toPrecision(3)).toString();
}
