import type { IStyleData } from "@univerjs/core";
import type { Area } from "./place";

/** Changes the style that whole columns have, for rows to come as well. */
export function restyleColumns({ sheet, cells }: Area, change: IStyleData): void {
  const { column, columns } = cells.place;
  for (let at = column; at < column + columns; at++) {
    const now = sheet.native.getSheet().getColumnStyle(at) ?? {};
    sheet.native.setColumnDefaultStyle(at, { ...now, ...change });
  }
}
