import type { FactOf } from '../../domain/set-up/register.ts';
import { factsOf, type Registers } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { wholeNumber } from '../../words/number-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { goTo } from '../parts/address.ts';
import { useApp, useShop } from '../parts/app-context.ts';
import { type SectionName, sectionIcons, sectionNames, sectionTitles } from './sections.ts';

/** All of Set-up at a glance, and for a newcomer the one thing to do next. */
export const Overview = () => {
  const shop = useShop();
  const waiting = useApp().updates.waiting.value;
  const next = nextStep(shop);
  return (
    <main class="set-up">
      <header>
        <h1>{words.title}</h1>
        <p>{words.lead}</p>
      </header>
      {next && (
        <Panel title={words.next} tone="warn">
          <PressButton
            size="bench-small"
            tone="go"
            icon="next"
            label={next.label}
            onAct={next.go}
            testId="setup-next"
          />
        </Panel>
      )}
      <ul class="set-up-rack">
        {sectionNames.map((name) => (
          <li key={name}>
            <PressButton
              size="bench-small"
              icon={sectionIcons[name]}
              label={sectionTitles[name]}
              detail={name === 'tablet' && waiting ? words.update : countWords(shop.registers, name)}
              onAct={() => goTo('set-up', name)}
              testId={`setup-${name}`}
            />
          </li>
        ))}
      </ul>
    </main>
  );
};

const registerOf: Partial<
  Record<SectionName, 'species' | 'part' | 'variant' | 'reason' | 'person' | 'stage' | 'route' | 'batch'>
> = {
  woods: 'species',
  parts: 'part',
  variants: 'variant',
  reasons: 'reason',
  people: 'person',
  stages: 'stage',
  route: 'route',
  batches: 'batch',
};

function countWords(registers: Registers, name: SectionName): string | undefined {
  const register = registerOf[name];
  return register && wholeNumber(factsOf(registers, register).filter(({ fact }) => isLive(fact)).length);
}

function isLive(fact: FactOf<'species'> | FactOf<'route'> | object): boolean {
  return !('retired' in fact && fact.retired);
}

/** What a shop still lacks before pieces can be tapped; null when it lacks nothing. */
function nextStep({ registers, trays }: Shop): { readonly label: string; readonly go: () => void } | null {
  const has = (register: 'species' | 'part' | 'variant') =>
    factsOf(registers, register).some(({ fact }) => isLive(fact));
  if (!has('species')) return { label: words.nextWood, go: () => goTo('set-up', 'woods') };
  if (!has('part')) return { label: words.nextPart, go: () => goTo('set-up', 'parts') };
  if (!has('variant')) return { label: words.nextVariant, go: () => goTo('set-up', 'variants') };
  if (trays.size === 0) return { label: words.nextTray, go: () => goTo('trays', 'new') };
  return null;
}
