/** A mark: subpaths that are stroked, and those that are filled. */
export interface IconPath {
  readonly line: string;
  readonly solid?: string;
}
