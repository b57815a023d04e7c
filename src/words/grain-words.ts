import type { GrainPattern } from '../domain/set-up/facts.ts';
import { inLanguage } from './language.ts';

export const grainWords = inLanguage<Record<GrainPattern, string>>('grainWords', {
  straight: 'Straight',
  'ray-fleck': 'Ray fleck',
  'ring-porous': 'Ring pores',
  cathedral: 'Cathedral',
  burl: 'Burl',
  curl: 'Curl',
  spalt: 'Spalt lines',
  stripe: 'Stripe',
  interlocked: 'Interlocked',
  'pore-dots': 'Scattered pores',
});

export const toneWords = inLanguage('toneWords', {
  pale: 'Pale',
  honey: 'Honey',
  red: 'Red',
  brown: 'Brown',
  dark: 'Dark',
  olive: 'Olive',
});
