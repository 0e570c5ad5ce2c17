/** How results show with their unit, in the demo and in written workbooks. */
export const NUMBER_FORMATS = {
  inches: '0.000" in."',
  /** Room a swing takes: no one measures it finer. */
  room: '0.0" in."',
  degrees: '0.0##"°"',
} as const;
