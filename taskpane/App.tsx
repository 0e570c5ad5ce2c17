import { FluentProvider, Spinner } from "@fluentui/react-components";
import {
  BookNumberRegular,
  DocumentBulletListRegular,
  HomeRegular,
  RulerRegular,
  WrenchRegular,
} from "@fluentui/react-icons";
import { lazy, Suspense, useCallback, useState, type ReactElement } from "react";
import { DRAWING_CSS } from "../src/drawing/paper/drawingCss";
import { Behind } from "./components/Behind";
import { Fence } from "./components/Fence";
import { BEND_ICON, ROUTE_ICON } from "./components/TradeIcons";
import { tabId, Tabs } from "./components/Tabs";
import { useDrawingAsked } from "./hooks/useDrawingAsked";
import { KeptProvider } from "./hooks/useKept";
import { LedgerProvider } from "./hooks/useLedger";
import { usePaneTheme } from "./hooks/usePaneTheme";
import { UnitsProvider } from "./hooks/useUnits";
import { LinkedRows } from "./run/LinkedRows";
import { RowsLeftOut } from "./run/RowsLeftOut";
import { StartView } from "./start/StartView";
import { strings } from "./strings";

// What is not on the first screen loads when it is asked for.
const BendView = lazy(() =>
  import(/* webpackChunkName: "pane-bend" */ "./bend/BendView").then(({ BendView: view }) => ({ default: view })),
);
const RunView = lazy(() =>
  import(/* webpackChunkName: "pane-run" */ "./run/RunView").then(({ RunView: view }) => ({ default: view })),
);
const TotalsView = lazy(() =>
  import(/* webpackChunkName: "pane-totals" */ "./totals/TotalsView").then(({ TotalsView: view }) => ({
    default: view,
  })),
);
const ShoeView = lazy(() =>
  import(/* webpackChunkName: "pane-shoe" */ "./shoe/ShoeView").then(({ ShoeView: view }) => ({ default: view })),
);
const TicketsView = lazy(() =>
  import(/* webpackChunkName: "pane-tickets" */ "./tickets/TicketsView").then(({ TicketsView: view }) => ({
    default: view,
  })),
);

const BenderView = lazy(() =>
  import(/* webpackChunkName: "pane-bender" */ "./bender/BenderView").then(({ BenderView: view }) => ({
    default: view,
  })),
);

const VIEWS = ["start", "bend", "run", "shoe", "totals", "tickets", "bender"] as const;
export type ViewName = (typeof VIEWS)[number];

const PANEL = "rl-view";

const ICONS: Record<ViewName, ReactElement> = {
  start: <HomeRegular />,
  bend: BEND_ICON,
  run: ROUTE_ICON,
  shoe: <RulerRegular />,
  totals: <BookNumberRegular />,
  tickets: <DocumentBulletListRegular />,
  bender: <WrenchRegular />,
};

/** The pane: seven views under one row of tabs, in the theme Office has. */
export function App() {
  const [kept] = useState(() => new Map<string, unknown>());
  return (
    <FluentProvider theme={usePaneTheme()} className="rl-pane">
      <style>{DRAWING_CSS}</style>
      <LedgerProvider>
        <UnitsProvider>
          <KeptProvider value={kept}>
            <Views />
          </KeptProvider>
        </UnitsProvider>
      </LedgerProvider>
    </FluentProvider>
  );
}

function Views() {
  const [view, setView] = useState<ViewName>("start");
  const drawingAsked = useDrawingAsked(useCallback(() => setView("start"), []));
  return (
    <>
      <header className="rl-header">
        <h1 className="rl-heading">{strings.app.title}</h1>
        <Tabs<ViewName>
          className="rl-nav"
          label={strings.app.views}
          tabs={VIEWS.map((name) => ({ value: name, text: strings.views[name], icon: ICONS[name] }))}
          value={view}
          onChange={setView}
          panel={PANEL}
        />
      </header>
      <main>
        <div id={PANEL} className="rl-view" role="tabpanel" aria-labelledby={tabId(PANEL, view)}>
          <h2 className="rl-title">{strings.views[view]}</h2>
          <Behind />
          <RowsLeftOut />
          <LinkedRows />
          <Fence key={view}>
            <Suspense fallback={<Spinner label={strings.common.opening} />}>
              {viewOf(view, setView, drawingAsked)}
            </Suspense>
          </Fence>
        </div>
      </main>
    </>
  );
}

function viewOf(view: ViewName, setView: (view: ViewName) => void, drawingAsked: number): ReactElement {
  const toStart = () => setView("start");
  switch (view) {
    case "start":
      return <StartView toRun={() => setView("run")} drawingAsked={drawingAsked} />;
    case "bend":
      return <BendView />;
    case "run":
      return <RunView toStart={toStart} />;
    case "shoe":
      return <ShoeView />;
    case "totals":
      return <TotalsView toStart={toStart} />;
    case "tickets":
      return <TicketsView toStart={toStart} />;
    case "bender":
      return <BenderView toStart={toStart} />;
  }
}
