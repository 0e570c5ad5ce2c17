import { MessageBar, MessageBarActions, MessageBarBody, MessageBarTitle } from "@fluentui/react-components";
import type { ReactNode } from "react";

/** A message that stays where it concerns: its words, and what can be done about it as buttons. */
export function Notice({
  intent = "info",
  title,
  children,
  actions,
}: {
  intent?: "info" | "success" | "warning" | "error";
  title?: string;
  children: ReactNode;
  actions?: ReactNode;
}) {
  return (
    <MessageBar intent={intent} layout="multiline" role={intent === "error" ? "alert" : "status"}>
      <MessageBarBody>
        {title && <MessageBarTitle>{title}</MessageBarTitle>}
        {children}
      </MessageBarBody>
      {actions && <MessageBarActions>{actions}</MessageBarActions>}
    </MessageBar>
  );
}
