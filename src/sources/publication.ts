/** A publication that a figure of this library was taken from. */
export interface Publication {
  /** Title as printed. */
  readonly title: string;
  /** Authors or issuing body of a cited work, where the title does not say it. */
  readonly authors?: string;
  /** Edition, year or date of the text used. */
  readonly edition: string;
  /** Table, page or section, where one place serves all figures taken from it. */
  readonly where?: string;
}
