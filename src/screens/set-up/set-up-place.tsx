import './set-up.css';
import type { ComponentType } from 'preact';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { address, goTo } from '../parts/address.ts';
import { onDemand } from '../parts/on-demand.tsx';
import { About } from './about.tsx';
import { Batches } from './batches.tsx';
import { Files } from './files.tsx';
import { LabelSizePage } from './label-size-page.tsx';
import { Machines } from './machines.tsx';
import { Overview } from './overview.tsx';
import { Parts } from './parts.tsx';
import { People } from './people.tsx';
import { Reasons } from './reasons.tsx';
import { Resources } from './resources.tsx';
import { Route } from './route.tsx';
import { type SectionName, sectionNames, sectionTitles } from './sections.ts';
import { Stages } from './stages.tsx';
import { Tablet } from './tablet.tsx';
import { Tablets } from './tablets.tsx';
import { Variants } from './variants.tsx';
import { Woods } from './woods.tsx';

const { Screen: Manual } = onDemand(async () => (await import('../parts/manual/manual.tsx')).Manual, null);

const sections: Readonly<Record<SectionName, ComponentType>> = {
  woods: Woods,
  parts: Parts,
  variants: Variants,
  reasons: Reasons,
  people: People,
  stages: Stages,
  route: Route,
  resources: Resources,
  machines: Machines,
  batches: Batches,
  labels: LabelSizePage,
  files: Files,
  tablet: Tablet,
  tablets: Tablets,
  manual: Manual,
  about: About,
};

/** What the shop works with: an overview, and a page for each kind of thing. */
export const SetUpPlace = () => {
  const name = sectionNames.find((each) => each === address.value.rest[0]);
  if (!name) return <Overview />;
  const Section = sections[name];
  return (
    <main class="set-up">
      <header class="set-up-head">
        <h1>{sectionTitles[name]}</h1>
        <PressButton icon="back" label={words.all} onAct={() => goTo('set-up')} testId="setup-back" />
      </header>
      <Section />
    </main>
  );
};
