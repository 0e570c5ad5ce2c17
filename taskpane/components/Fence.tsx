import { Component, type ReactNode } from "react";
import { strings } from "../strings";
import { Notice } from "./Notice";

/** Keeps a fault in one view from taking the whole pane with it. */
export class Fence extends Component<{ children: ReactNode }, { fault: string }> {
  override state = { fault: "" };

  static getDerivedStateFromError(error: unknown): { fault: string } {
    return { fault: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    if (!this.state.fault) return this.props.children;
    return (
      <Notice intent="error" title={strings.common.broken}>
        {this.state.fault}
      </Notice>
    );
  }
}
