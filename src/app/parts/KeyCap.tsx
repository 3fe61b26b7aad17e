/** A key as it is drawn beside what it does. */
export const KeyCap = ({ children }: { readonly children: string }) => <kbd class="key">{children}</kbd>;
