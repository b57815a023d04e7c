/** More good ones of one variant than that are not asked about: it would take minutes, and no maker starts so many at once. */
export const mostWanted = 20_000;
