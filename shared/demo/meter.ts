import { lots } from './blanks.ts';
import type { Doer, Teller } from './teller.ts';

/** The air of the demo workshop, tenths of °C and of a per cent. */
const air = { celsius: 180, humidity: 480 };

/** Reads the meter on the morning of a working day. */
export function readMeter(teller: Teller, { day, doing }: { day: number; doing: Doer }): void {
  for (const { id: lot, readings } of lots) {
    const percent = readings[day];
    if (percent !== undefined) teller.tell({ kind: 'read-moisture', lot, percent, air }, doing);
  }
}
