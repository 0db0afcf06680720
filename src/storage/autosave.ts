/** What the header says about saving. "Saved" only after the database has said that the write is complete. */
export type SavingState =
  | { readonly kind: 'saved' }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'failed'; readonly says: string; readonly tries: number }
  | { readonly kind: 'readOnly'; readonly says: string };
