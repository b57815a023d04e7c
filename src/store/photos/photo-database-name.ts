/** The database with the photos of the shop whose log has this name. The rescue page knows it by its ending. */
export const photoDatabaseOf = (shop: string): string => `${shop}-photos`;
