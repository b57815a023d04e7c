import type { ShopDatabase } from './shop-schema.ts';

/** How often a lost connection is opened anew before a failure is passed on. */
const mostTries = 3;

/**
 * A connection that is opened when it is wanted and anew when it was lost: Safari drops those of hidden windows. Work
 * is done again on the new one, so it must be harmless when done twice.
 */
export function healingConnection(open: (lost: () => void) => Promise<ShopDatabase>) {
  let opened: Promise<ShopDatabase> | undefined;
  const forget = () => {
    opened = undefined;
  };
  function database(): Promise<ShopDatabase> {
    opened ??= open(forget).catch((error: unknown) => {
      forget();
      throw error;
    });
    return opened;
  }
  /** Leaves the connection; the next work opens a new one. What hangs on the old one is known by its act. */
  function leave(): void {
    opened?.then(
      (db) => db.close(),
      () => undefined,
    );
    forget();
  }
  return {
    leave,
    async withDatabase<Result>(work: (db: ShopDatabase) => Promise<Result>): Promise<Result> {
      for (let tries = 1; ; tries += 1) {
        try {
          return await work(await database());
        } catch (error) {
          if (tries === mostTries || !isConnectionLoss(error)) throw error;
          forget();
        }
      }
    },
  };
}

function isConnectionLoss(error: unknown): boolean {
  return (
    error instanceof DOMException && (error.name === 'InvalidStateError' || error.name === 'UnknownError')
  );
}
