import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** A part that a place can do without for a moment, and for good if its code cannot be had: until then nothing stands there. */
export function late(load: () => Promise<ComponentType>): ComponentType {
  let loaded: ComponentType | undefined;
  return () => {
    const [, setReady] = useState(loaded !== undefined);
    useEffect(() => {
      const show = (component: ComponentType) => {
        loaded = component;
        setReady(true);
      };
      // Also when it is there by now: another place may have got it after the first drawing of this one.
      load().then(show, () => undefined);
    }, []);
    const Loaded = loaded;
    return Loaded ? <Loaded /> : null;
  };
}
