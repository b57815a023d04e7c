import type { ComponentType, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';

export interface OnDemand<Props> {
  readonly Screen: ComponentType<Props>;
  /** Fetches the code ahead, so that the screen stands at once when it is wanted. */
  readonly ahead: () => void;
}

/** A screen whose code is fetched when it is first wanted; it is in the offline cache from the install on. `meanwhile` stands until then. */
export function onDemand<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  meanwhile: JSX.Element | null = <main aria-busy="true" />,
): OnDemand<Props> {
  let loaded: ComponentType<Props> | undefined;
  let loading: Promise<void> | undefined;
  const fetch = () => {
    loading ??= load().then(
      (component) => {
        loaded = component;
      },
      (error: unknown) => {
        // Asked for again the next time: a file that could not be had now may be there then.
        loading = undefined;
        throw error;
      },
    );
    return loading;
  };
  const Screen = (props: Props) => {
    const [failed, setFailed] = useState<unknown>();
    const [, setReady] = useState(false);
    useEffect(() => {
      // Also when it is there by now: the code may have come after the first drawing of this screen.
      fetch().then(() => setReady(true), setFailed);
    }, []);
    // Said by the boundary around the place, with a way to try again.
    if (failed !== undefined) throw failed;
    const Loaded = loaded;
    return Loaded ? <Loaded {...props} /> : meanwhile;
  };
  return { Screen, ahead: () => void fetch().catch(() => undefined) };
}
