import type { SpeciesId } from '../../domain/log/ids.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { standingReaction } from '../../domain/wood/reactions.ts';
import { GrainSwatch } from '../../ui/flow/grain-swatch.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { woodMarkWords } from '../../words/wood-mark-words.ts';
import { useShop } from './app-context.ts';
import './wood-name.css';

/** A wood by its name and its drawn grain, never by colour alone. */
export const WoodName = ({ species }: { species: SpeciesId }) => {
  const fact = factOf(useShop().registers, { register: 'species', id: species });
  if (!fact) return <span>{species}</span>;
  return (
    <span class="wood-name">
      <GrainSwatch pattern={fact.grain} tones={{ ground: fact.light, line: fact.dark }} size="small" />
      <span dir="auto">{fact.name}</span>
      {standingReaction(fact) && (
        <b class="wood-mark">
          <Icon name="warn" size={24} />
          <span>{woodMarkWords.reacted}</span>
        </b>
      )}
    </span>
  );
};
