/** Where the pages of a plan lie: the server's business, not the pages'. */
export interface Links {
  readonly home: string;
  readonly joint: (tag: string) => string;
  readonly cards: (tag?: string) => string;
  readonly data: string;
  readonly style: string;
}
