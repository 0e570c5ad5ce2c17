/** What office-addin-mock needs of office-addin-manifest, whose own entry cannot be loaded by jest. */
export enum OfficeApp {
  Excel = "excel",
  OneNote = "onenote",
  Outlook = "outlook",
  PowerPoint = "powerpoint",
  Project = "project",
  Word = "word",
}
