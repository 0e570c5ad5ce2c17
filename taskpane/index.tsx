import { mountPane } from "./mountPane";

void Office.onReady(() => {
  const place = document.getElementById("pane");
  if (place) mountPane(place);
});
