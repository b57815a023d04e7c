import { useState } from 'preact/hooks';
import { Panel } from '../../../src/ui/panel/panel.tsx';
import { type Place, TabsNav } from '../../../src/ui/places/tabs-nav.tsx';

const places: readonly Place[] = [
  { id: 'bench', label: 'Bench', icon: 'bench', href: '#bench' },
  { id: 'trays', label: 'Trays', icon: 'trays', href: '#trays' },
  { id: 'stores', label: 'Stores', icon: 'stores', href: '#stores' },
  { id: 'plan', label: 'Plan', icon: 'plan', href: '#plan' },
  { id: 'yield', label: 'Yield', icon: 'yield', href: '#yield' },
  { id: 'day', label: 'Day', icon: 'day', href: '#day', waiting: 'Backup is due' },
  { id: 'shelf', label: 'Shelf', icon: 'shelf', href: '#shelf' },
  { id: 'set-up', label: 'Set-up', icon: 'set-up', href: '#set-up' },
];

/** The places in their rack. */
export const PlacesPage = () => {
  const [current, setCurrent] = useState('stores');
  return (
    <div class="gallery-shell">
      <main class="gallery">
        <Panel title="Stores">
          <p>Something to read.</p>
        </Panel>
      </main>
      <TabsNav
        label="Places"
        places={places}
        current={current}
        moreLabel="More"
        closeLabel="Close"
        onGo={setCurrent}
      />
    </div>
  );
};
