import { useEffect, useState } from 'preact/hooks';
import type { TextMeasure } from '../../../domain/label/fit-text.ts';

/** How wide the texts of a label are, in em: plain ones and heavy ones. */
export interface TextMeasures {
  readonly plain: TextMeasure;
  readonly heavy: TextMeasure;
}

const faces = {
  plain: '450 100px "Atkinson Hyperlegible Next"',
  heavy: '750 100px "Atkinson Hyperlegible Next"',
};
const codeFace = '750 100px "Atkinson Hyperlegible Mono"';
/** A printer's face may be a little wider than the screen's. */
const allowance = 1.02;
/** Wider than most signs, for a browser that measures no text. */
const usualSign = 0.62;

function measures(): TextMeasures {
  const pen = document.createElement('canvas').getContext('2d');
  const measureIn =
    (face: string): TextMeasure =>
    (text) => {
      if (!pen) return text.length * usualSign;
      pen.font = face;
      return (pen.measureText(text).width / 100) * allowance;
    };
  return { plain: measureIn(faces.plain), heavy: measureIn(faces.heavy) };
}

/** The measures, once the faces are there; null until then. */
export function useTextMeasures(): TextMeasures | null {
  const [ready, setReady] = useState<TextMeasures | null>(null);
  useEffect(() => {
    const show = () => setReady(measures());
    // A face that cannot be had is measured as what stands in for it.
    Promise.all([codeFace, ...Object.values(faces)].map((face) => document.fonts?.load(face))).then(
      show,
      show,
    );
  }, []);
  return ready;
}
