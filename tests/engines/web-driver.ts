/** A session of a browser over WebDriver (W3C Recommendation, 5 June 2018), as much of it as the walk asks for. */
const elementKey = 'element-6066-11e4-a52e-4f735466cecf';

/** How long one call may take (ms): a driver that hangs fails the test that asked, and not the whole run. */
const longestCall = 60_000;

export interface ElementId {
  readonly [elementKey]: string;
}

export type Call = <Answer>(
  method: 'GET' | 'POST' | 'DELETE',
  path: string,
  body?: object,
) => Promise<Answer>;

/** Calls at `address`. What is not answered in time, or with an error, throws with what was asked. */
export const callerAt =
  (address: string): Call =>
  async (method, path, body) => {
    const answer = await fetch(`${address}${path}`, {
      method,
      ...(body && { body: JSON.stringify(body) }),
      signal: AbortSignal.timeout(longestCall),
    });
    const { value } = await answer.json();
    if (!answer.ok) throw new Error(`${method} ${path}: ${value.error}: ${value.message}`);
    return value;
  };

export interface Session {
  readonly call: Call;
  readonly end: () => Promise<void>;
}

/** A session in a browser with nothing remembered. */
export async function openSession(address: string, capabilities: object): Promise<Session> {
  const atDriver = callerAt(address);
  const { sessionId } = await atDriver<{ sessionId: string }>('POST', '/session', {
    capabilities: { alwaysMatch: capabilities },
  });
  const call = callerAt(`${address}/session/${sessionId}`);
  await call('POST', '/timeouts', { script: longestCall, pageLoad: longestCall, implicit: 0 });
  return { call, end: () => call('DELETE', '') };
}

export const idOf = (element: ElementId): string => element[elementKey];
