/** What the fragment of an address begins with that holds a design; then its form's number. */
export const linkMark = '#d=';
