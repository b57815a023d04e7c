import type { Shop } from '../shop/shop.ts';
import type { Command } from './command.ts';
import { decideFlaw, decideLoad, decidePass } from './decide-pieces.ts';
import { decideRecount } from './decide-recount.ts';
import { decideChangeRoute, decideSet } from './decide-set-up.ts';
import { decideJoin, decideMakeTrays, decideSplit } from './decide-trays.ts';
import { decideUndo } from './decide-undo.ts';
import { type Circumstances, type Decision, envelopeAt, happens } from './decision.ts';

/** Turns a command into the events that it amounts to, or says why not. Touches nothing. */
export function decide(shop: Shop, command: Command, at: Circumstances): Decision {
  switch (command.kind) {
    case 'pass':
      return decidePass(shop, command, at);
    case 'flaw':
      return decideFlaw(shop, command, at);
    case 'load':
      return decideLoad(shop, command, at);
    case 'make-trays':
      return decideMakeTrays(shop, command, at);
    case 'split':
      return decideSplit(shop, command, at);
    case 'join':
      return decideJoin(shop, command, at);
    case 'recount':
      return decideRecount(shop, command, at);
    case 'change-route':
      return decideChangeRoute(shop, command, at);
    case 'set':
      return decideSet(shop, command, at);
    case 'undo':
      return decideUndo(shop, command, at);
    case 'begin-spell':
      return happens([{ ...envelopeAt(at), kind: 'spell-begun', stage: command.stage }]);
    case 'end-spell':
      return happens([{ ...envelopeAt(at), kind: 'spell-ended', stage: command.stage, elapsed: at.elapsed }]);
  }
}
