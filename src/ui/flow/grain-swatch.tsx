import './grain-swatch.css';
import { useId } from 'preact/hooks';
import { type GrainName, type GrainTones, grains } from './grain-patterns.ts';

export interface GrainSwatchProps {
  pattern: GrainName;
  tones: GrainTones;
  /** 28, 44 or 76 px square, or as large as its box. */
  size?: 'small' | 'normal' | 'big' | 'fill' | undefined;
}

/** A wood's drawn grain. Decorative: the name of the wood stands beside it. */
export const GrainSwatch = ({ pattern, tones, size = 'normal' }: GrainSwatchProps) => {
  const id = useId();
  const { lines, spots, width } = grains[pattern];
  return (
    <svg class="grain" data-size={size} aria-hidden="true" focusable="false">
      <defs>
        <pattern id={id} width="24" height="24" patternUnits="userSpaceOnUse">
          <rect width="24" height="24" fill={tones.ground} />
          {lines && <path d={lines} fill="none" stroke={tones.line} stroke-width={width} />}
          {spots && <path d={spots} fill={tones.line} />}
        </pattern>
      </defs>
      <rect width="100%" height="100%" fill={`url(#${id})`} />
    </svg>
  );
};
