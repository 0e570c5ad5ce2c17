import { useRef, type KeyboardEvent, type ReactElement } from "react";

export interface TabItem<T extends string> {
  value: T;
  text: string;
  icon?: ReactElement;
}

interface TabsProps<T extends string> {
  label: string;
  tabs: readonly TabItem<T>[];
  value: T;
  onChange(value: T): void;
  /** Id of the part of the page the tabs show; each tab's own id is made from it. */
  panel: string;
  className?: string;
}

const STEPS: Readonly<Record<string, (index: number, count: number) => number>> = {
  ArrowRight: (index, count) => (index + 1) % count,
  ArrowLeft: (index, count) => (index + count - 1) % count,
  Home: () => 0,
  End: (_, count) => count - 1,
};

/** Id of a tab, for the panel that is named by it. */
export const tabId = (panel: string, value: string): string => `${panel}-tab-${value}`;

/**
 * Tabs in one row: Tab reaches the chosen one, arrow keys go along the row, Enter or Space chooses. Fluent's own list of
 * tabs brings a focus library that is larger than all the views.
 */
export function Tabs<T extends string>({ label, tabs, value, onChange, panel, className = "" }: TabsProps<T>) {
  const row = useRef<HTMLDivElement>(null);
  const onKey = (event: KeyboardEvent, index: number) => {
    const step = STEPS[event.key];
    if (!step) return;
    event.preventDefault();
    row.current?.querySelectorAll<HTMLElement>("[role=tab]")[step(index, tabs.length)]?.focus();
  };
  return (
    <div ref={row} role="tablist" aria-label={label} className={`rl-tabs ${className}`}>
      {tabs.map((tab, index) => (
        <button
          key={tab.value}
          type="button"
          role="tab"
          id={tabId(panel, tab.value)}
          aria-controls={panel}
          aria-selected={tab.value === value}
          tabIndex={tab.value === value ? 0 : -1}
          onClick={() => onChange(tab.value)}
          onKeyDown={(event) => onKey(event, index)}
        >
          {tab.icon}
          <span>{tab.text}</span>
        </button>
      ))}
    </div>
  );
}
