/** The greatest key of a station among those that are a station and a number: an array sorts after every number. */
export const lastOf = (station: string) => [station, []] as unknown as [string, number];
