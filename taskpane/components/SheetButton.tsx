import { Button, type ButtonProps } from "@fluentui/react-components";
import { forwardRef } from "react";
import { useLedger } from "../hooks/useLedger";

/** A button for what rests on the sheet as it is: off while the pane is behind it. */
export const SheetButton = forwardRef<HTMLButtonElement, ButtonProps>(function SheetButton(
  { disabledFocusable = false, ...props },
  ref,
) {
  const { behind } = useLedger();
  return <Button {...(props as object)} ref={ref} disabledFocusable={disabledFocusable || behind !== ""} />;
});
