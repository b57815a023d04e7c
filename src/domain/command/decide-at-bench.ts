import type { Shop } from '../shop/shop.ts';
import type { Command, CommandOf } from './command.ts';
import { decideFlaw, decideLoad, decidePass } from './decide-pieces.ts';
import { type Circumstances, type Decision, envelopeAt, happens } from './decision.ts';

const benchKinds = ['pass', 'flaw', 'load', 'begin-spell', 'end-spell'] as const;
type BenchCommand = CommandOf<(typeof benchKinds)[number]>;

export function isBenchCommand(command: Command): command is BenchCommand {
  return benchKinds.some((kind) => kind === command.kind);
}

/** Decides what is asked at a stage: with little code, which is fetched ahead, so that no tap waits for it. */
export function decideAtBench(shop: Shop, command: BenchCommand, at: Circumstances): Decision {
  switch (command.kind) {
    case 'pass':
      return decidePass(shop, command, at);
    case 'flaw':
      return decideFlaw(shop, command, at);
    case 'load':
      return decideLoad(shop, command, at);
    case 'begin-spell':
      return happens([{ ...envelopeAt(at), kind: 'spell-begun', stage: command.stage }]);
    case 'end-spell':
      return happens([{ ...envelopeAt(at), kind: 'spell-ended', stage: command.stage, elapsed: at.elapsed }]);
  }
}
