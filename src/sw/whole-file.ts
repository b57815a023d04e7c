/**
 * Lets only a file be kept that came as it was built, by the digest that its request names. The engine compares the two as
 * well; Firefox 153 does not where the connection breaks off in mid-file, and would keep half of it.
 */
export const wholeFile = {
  async cacheWillUpdate({
    request,
    response,
  }: {
    readonly request: Request;
    readonly response: Response;
  }): Promise<Response | null> {
    const came = await response.clone().arrayBuffer();
    // The web app manifest is put beside the files by the tool that lists them, and has no digest.
    const isWhole = request.integrity === '' || request.integrity === (await integrityOf(came));
    return response.ok && isWhole ? response : null;
  },
};

/** As W3C Subresource Integrity writes it. */
async function integrityOf(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return `sha256-${btoa(String.fromCharCode(...digest))}`;
}
