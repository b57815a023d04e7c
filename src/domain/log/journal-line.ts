import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import { type Entry, type Link, linkOver } from './chain.ts';

/**
 * What a line of a journal says. Every line carries its own check, so that one that was torn or changed is found out
 * without knowing the lines around it, and without knowing what this version knows of events and acts.
 */
export type JournalLine =
  | { readonly kind: 'entry'; readonly link: Link }
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
  return `{"act":${json},"check":"${checkOf(json)}"}`;
}

export function settledLine(act: string): string {
  const json = JSON.stringify(act);
  return `{"settled":${json},"check":"${checkOf(json)}"}`;
}

const entryForm = /^\{"prev":"([0-9a-f]{32})","link":"([0-9a-f]{32})","event":(.*)\}$/s;
const noteForm = /^\{"(act|settled)":(.*),"check":"([0-9a-f]{16})"\}$/s;

/** Reads one line, given without its newline. Only the very text that was written is sound. Never throws. */
export function readJournalLine(line: string): JournalLine {
  const [, prev, link, event] = entryForm.exec(line) ?? [];
  if (event !== undefined)
    return linkOver(prev as Link, event) === link ? { kind: 'entry', link: link as Link } : unreadable;
  const [, kind, json, check] = noteForm.exec(line) ?? [];
  if (json === undefined || checkOf(json) !== check) return unreadable;
  const value = fromJson(json);
  if (kind === 'settled') return typeof value === 'string' ? { kind, act: value } : unreadable;
  return v.is(named, value) ? { kind: 'act', act: value.act, json } : unreadable;
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
