/** As it is stamped on the label, and the minutes it stands for. */
export const labelsAsStamped: readonly (readonly [minutes: number, stamped: string])[] = [
  [20, '20 MIN'],
  [30, '30 MIN'],
  [45, '3/4 HR'],
  [60, '1 HR'],
  [90, '1-1/2 HR'],
  [180, '3 HR'],
];
