import { openByShortcut } from "./excel/startup";
import { mountPane } from "./mountPane";

void Office.onReady(() => {
  openByShortcut();
  const place = document.getElementById("pane");
  if (place) mountPane(place);
});
