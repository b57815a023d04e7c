import './icon.css';
import { type IconName, iconPaths, turning } from './icon-paths.ts';

export interface IconProps {
  name: IconName;
  /** Pixels each way: 32 in running text and normal buttons, more on the bench. */
  size?: 24 | 32 | 48 | 64 | undefined;
}

/** One mark. Always beside a word, never alone, so it is hidden from screen readers. */
export const Icon = ({ name, size = 32 }: IconProps) => {
  const path: { line: string; solid?: string } = iconPaths[name];
  return (
    <svg
      class={turning.has(name) ? 'icon icon-turning' : 'icon'}
      width={size}
      height={size}
      viewBox="0 0 32 32"
      aria-hidden="true"
      focusable="false"
    >
      {path.line && <path d={path.line} />}
      {path.solid && <path class="icon-solid" d={path.solid} />}
    </svg>
  );
};
