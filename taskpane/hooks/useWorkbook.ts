import { createContext, useContext } from "react";
import * as excel from "../excel";

/** The workbook as the views see it: the functions of excel/, which tests replace with their own. */
export type WorkbookApi = typeof excel;

export const WorkbookContext = createContext<WorkbookApi>(excel);

export const useWorkbook = (): WorkbookApi => useContext(WorkbookContext);
