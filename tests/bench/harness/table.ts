import type { Row } from './row.ts';

/** The rows as a table for the console. */
export function tableOf(rows: readonly Row[]): readonly Readonly<Record<string, string>>[] {
  return rows.map(({ id, ours, unit, limit, peers, ratio, bar, ok, spread: [least, most] }) => ({
    id,
    ours: `${short(ours)} ${unit}`,
    spread: `${short(least)}–${short(most)}`,
    limit: limit === null ? '' : `${short(limit)} (ours ${short(ratio.limit ?? Number.NaN)} ×)`,
    peers: Object.entries(peers)
      .map(([name, figure]) => `${name} ${short(figure)} (${short(ratio[name] ?? Number.NaN)} ×)`)
      .join(', '),
    bar: bar.join('; '),
    ok: bar.length === 0 ? '' : ok ? 'yes' : 'NO',
  }));
}

/** Three significant figures, more where the number has more before its point. */
function short(figure: number): string {
  return Math.abs(figure) >= 100 ? figure.toFixed(0) : Number(figure.toPrecision(3)).toString();
}
