/** What passes between a window and the worker that reads symbols for it. Types only. */

export type ToSymbolWorker =
  /** Comes once and first: the address of the decoder's WebAssembly. */
  | { readonly kind: 'begin'; readonly wasm: string }
  /** A frame, handed over; each is answered before the next one comes. */
  | { readonly kind: 'read'; readonly frame: ImageBitmap };

export type FromSymbolWorker =
  | { readonly kind: 'read'; readonly texts: readonly string[] }
  | { readonly kind: 'failed'; readonly problem: string };
