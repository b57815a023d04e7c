/** Bytes that are handed to the browser as they come, so that a long file is never in memory as a whole. */
export interface Gathering {
  readonly push: (bytes: Uint8Array) => void;
  readonly size: () => number;
  readonly blob: () => Blob;
}

/** So many bytes are handed over at a time. */
const handful = 4_000_000;

export function gathering(): Gathering {
  const handed: Blob[] = [];
  let waiting: Uint8Array<ArrayBuffer>[] = [];
  let waits = 0;
  let size = 0;
  function handOver(): void {
    handed.push(new Blob(waiting));
    waiting = [];
    waits = 0;
  }
  return {
    push(bytes) {
      waiting.push(new Uint8Array(bytes));
      waits += bytes.length;
      size += bytes.length;
      if (waits >= handful) handOver();
    },
    size: () => size,
    blob() {
      if (waits > 0) handOver();
      return new Blob(handed);
    },
  };
}

export async function bytesOfBlob(blob: Blob): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await blob.arrayBuffer());
}
