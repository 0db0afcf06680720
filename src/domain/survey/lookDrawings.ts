/** What is drawn beside a look, so that nobody has to know the word for it. */
export type DrawingOfLook = 'edges' | 'label' | 'strike' | 'rods';
