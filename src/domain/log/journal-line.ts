import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import { type Entry, type Link, linkOver } from './chain.ts';

/**
 * What a line of a journal says. Every line carries its own check, so that one that was torn or changed is found out
 * without knowing the lines around it, and without knowing what this version knows of events and acts.
 */
export type JournalLine =
  | { readonly kind: 'entry'; readonly prev: Link; readonly link: Link; readonly json: string }
  /** A tap that the store had not taken: its name, and the act as JSON. */
  | { readonly kind: 'act'; readonly act: string; readonly json: string }
  /** The act of this name is in the store, or was given up. */
  | { readonly kind: 'settled'; readonly act: string }
  | { readonly kind: 'unreadable' };

/** An entry as a line, without the newline: its link is its check. */
export function entryLine({ prev, link, event }: Entry): string {
  return JSON.stringify({ prev, link, event });
}

/** @param json an act as JSON, with its name in `act` */
export function actLine(json: string): string {
  return checkedLine('act', json);
}

export function settledLine(act: string): string {
  return checkedLine('settled', JSON.stringify(act));
}

/** A line that says anything, under a name of a few letters; `json` is what it says. */
export function checkedLine(name: string, json: string): string {
  return `{"${name}":${json},"check":"${checkOf(json)}"}`;
}

/** What a checked line says, parsed, and as the JSON that was written; undefined when it is not as it was written. */
export function readCheckedLine(line: string): { name: string; json: string; value: unknown } | undefined {
  const [, name = '', json, check] = checkedForm.exec(line) ?? [];
  if (json === undefined || checkOf(json) !== check) return undefined;
  return { name, json, value: fromJson(json) };
}

const entryForm = /^\{"prev":"([0-9a-f]{32})","link":"([0-9a-f]{32})","event":(.*)\}$/s;
const checkedForm = /^\{"([a-z]+)":(.*),"check":"([0-9a-f]{16})"\}$/s;

/** Reads one line, given without its newline. Only the very text that was written is sound. Never throws. */
export function readJournalLine(line: string): JournalLine {
  const [, prev, link, json] = entryForm.exec(line) ?? [];
  if (json !== undefined) return entrySaid({ prev: prev as Link, link: link as Link, json });
  const said = readCheckedLine(line);
  if (said?.name === 'settled' && typeof said.value === 'string') return { kind: 'settled', act: said.value };
  if (said?.name === 'act' && v.is(named, said.value))
    return { kind: 'act', act: said.value.act, json: said.json };
  return unreadable;
}

function entrySaid(entry: { prev: Link; link: Link; json: string }): JournalLine {
  return linkOver(entry.prev, entry.json) === entry.link ? { kind: 'entry', ...entry } : unreadable;
}

const unreadable = { kind: 'unreadable' } as const;
const named = v.object({ act: v.string() });

/** The first 64 bits of the SHA-256 sum (FIPS 180-4) of a text in UTF-8, as 16 hex digits. */
function checkOf(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)).subarray(0, 8));
}

function fromJson(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}
