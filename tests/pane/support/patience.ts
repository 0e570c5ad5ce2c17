import { configure } from "@testing-library/react";

// Working out what is hidden is what takes jsdom longest, and nothing in the pane is both there and hidden.
configure({ defaultHidden: true, asyncUtilTimeout: 5000 });
jest.setTimeout(30000);
