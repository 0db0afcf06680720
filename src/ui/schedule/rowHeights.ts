export const deskRowPx = 48;
/** A phone's columns are narrow: three lines in a cell. */
export const phoneRowPx = 64;
