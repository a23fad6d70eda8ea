/** What differs between the two stores, by name. */
export type Engine = 'sqlite' | 'postgres';
