import * as v from 'valibot';
import { lotId, speciesId } from './ids.ts';
import { whole } from './whole.ts';

/** Bounds of what a meter can show; all are tenths, because all numbers of the log are whole. */
export const moistureBounds = { least: 0, most: 2000 } as const;
export const celsiusBounds = { least: -500, most: 1500 } as const;
export const humidityBounds = { least: 0, most: 1000 } as const;

/** The moisture of a lot of blanks was read off a meter. */
export const moistureRead = {
  kind: v.literal('moisture-read'),
  lot: lotId,
  species: speciesId,
  /** Tenths of a per cent of the oven-dry weight. */
  percent: whole(moistureBounds.least, moistureBounds.most),
  /** The air of the room, where it was read too: tenths of °C, tenths of a per cent of relative humidity. */
  air: v.exactOptional(
    v.object({
      celsius: whole(celsiusBounds.least, celsiusBounds.most),
      humidity: whole(humidityBounds.least, humidityBounds.most),
    }),
  ),
};
