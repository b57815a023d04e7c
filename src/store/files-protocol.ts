import * as v from 'valibot';
import { linkText } from '../domain/log/chain.ts';
import { holdingSchema } from '../domain/log/holding.ts';

/** What a window asks of the worker that keeps its files, by name, with the answer's schema. */
export const answers = {
  look: v.object({ holding: holdingSchema, unreadable: v.number(), unsettled: v.array(v.string()) }),
  add: v.undefined(),
  keepAct: v.undefined(),
  settleAct: v.undefined(),
  links: v.array(linkText),
  lines: v.array(v.object({ link: linkText, line: v.string() })),
  fileNames: v.array(v.string()),
  readFile: v.optional(v.instance(Uint8Array)),
  writeFile: v.undefined(),
  removeFile: v.undefined(),
} as const;

export type Question = keyof typeof answers;
export type AnswerTo<Name extends Question> = v.InferOutput<(typeof answers)[Name]>;

/** What goes with each question. */
export interface Input {
  readonly look: undefined;
  readonly add: readonly { readonly link: string; readonly line: string }[];
  readonly keepAct: string;
  readonly settleAct: string;
  readonly links: undefined;
  readonly lines: readonly string[];
  readonly fileNames: undefined;
  readonly readFile: string;
  readonly writeFile: { readonly name: string; readonly bytes: Uint8Array };
  readonly removeFile: string;
}

/** The first message: the store whose files are meant. */
export const beginSchema = v.object({ begin: v.string() });

export const askSchema = v.object({
  id: v.number(),
  ask: v.picklist(Object.keys(answers) as Question[]),
  input: v.unknown(),
});

export const replySchema = v.variant('kind', [
  v.object({ id: v.number(), kind: v.literal('done'), answer: v.unknown() }),
  v.object({ id: v.number(), kind: v.literal('failed'), problem: v.string() }),
]);
