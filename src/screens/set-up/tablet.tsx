import { KeysPanel } from './keys-panel.tsx';
import { ShopPanel } from './shop-panel.tsx';
import { StationPanel } from './station-panel.tsx';
import { VersionPanel } from './version-panel.tsx';

/** The tablet in one's hand: who taps, looks and sound, keys, the shop's day, version and demo. */
export const Tablet = () => (
  <>
    <StationPanel />
    <KeysPanel />
    <ShopPanel />
    <VersionPanel />
  </>
);
