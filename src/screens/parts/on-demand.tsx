import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** A screen whose code is fetched when it is first shown; it is in the offline cache from the install on. */
export function onDemand(load: () => Promise<ComponentType>): ComponentType {
  let loaded: ComponentType | undefined;
  return function OnDemand() {
    const [, setReady] = useState(loaded !== undefined);
    useEffect(() => {
      if (loaded) return;
      void load().then((component) => {
        loaded = component;
        setReady(true);
      });
    }, []);
    const Screen = loaded;
    return Screen ? <Screen /> : <main aria-busy="true" />;
  };
}
