import './icon.css';
import { signal } from '@preact/signals';
import type { IconPath } from './icon-path.ts';
import { type IconName, iconPaths, turning } from './icon-paths.ts';

export interface IconProps {
  name: IconName;
  /** Pixels each way: 32 in running text and normal buttons, more on the bench. */
  size?: 24 | 32 | 48 | 64 | undefined;
}

type Paths = Readonly<Partial<Record<IconName, IconPath>>>;
const late = signal<Paths>({});
// Without them a button still has its word.
import('./late-icons.ts').then(
  ({ lateIcons }) => {
    late.value = lateIcons;
  },
  () => undefined,
);

/** One mark. Always beside a word, never alone, so it is hidden from screen readers. */
export const Icon = ({ name, size = 32 }: IconProps) => {
  const path = (iconPaths as Paths)[name] ?? late.value[name];
  return (
    <svg
      class={turning.has(name) ? 'icon icon-turning' : 'icon'}
      width={size}
      height={size}
      viewBox="0 0 32 32"
      aria-hidden="true"
      focusable="false"
    >
      {path?.line && <path d={path.line} />}
      {path?.solid && <path class="icon-solid" d={path.solid} />}
    </svg>
  );
};
