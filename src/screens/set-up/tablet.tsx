import { DemoPanel } from './demo-panel.tsx';
import { KeysPanel } from './keys-panel.tsx';
import { LockPanel } from './lock-panel.tsx';
import { LooksPanel } from './looks-panel.tsx';
import { NotifyPanel } from './notify-panel.tsx';
import { RecordsPanel } from './records-panel.tsx';
import { ShopPanel } from './shop-panel.tsx';
import { SoundPanel } from './sound-panel.tsx';
import { StationPanel } from './station-panel.tsx';
import { VersionPanel } from './version-panel.tsx';

/** The tablet in one's hand: who taps, looks, sound, letter, keys, the lock, the shop's day, version, records and demo. */
export const Tablet = () => (
  <>
    <LooksPanel />
    <SoundPanel />
    <NotifyPanel />
    <KeysPanel />
    <LockPanel />
    <StationPanel />
    <ShopPanel />
    <VersionPanel />
    <RecordsPanel />
    <DemoPanel />
  </>
);
