/** Supports of conductors in vertical raceway in the take-off: NEC 2023, 300.19(A) and its table, as read; counts by hand. */
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { records, runsRange } from "../tables";

const counted = (run: object) =>
  records(
    takeoff(
      runsRange({ Run: "R", Raceway: "RMC", Size: "4", Route: "up 100'", Conductors: "3 500 kcmil XHHW-2", ...run }),
    ),
  ).flatMap(({ Item, Quantity }) => (Item === "RMC 4 conductor support" ? [Quantity] : []));

test.each([
  // 500 kcmil copper may hang 50 ft, 4/0 copper 80 ft.
  ["100 ft of 500 kcmil: at the top and half way", {}, [2]],
  ["three times", { Quantity: 3 }, [6]],
  ["50 ft need none", { Route: "up 50'" }, []],
  // 60 ft below a support at the top are more than 50: another on the way.
  ["60 ft, a box, 60 ft: two in each pull", { Route: "up 60', box, up 60'" }, [4]],
  ["4/0 over 81 ft: at the top and on the way", { Conductors: "3 #4/0 XHHW-2", Route: "up 81'" }, [2]],
  ["4/0 over 80 ft", { Conductors: "3 #4/0 XHHW-2", Route: "up 80'" }, []],
  ["nothing hangs in an empty conduit", { Conductors: "" }, []],
  ["conductors that cannot be read are told elsewhere", { Conductors: "3 of them" }, []],
])("%s", (_name, run, supports) => expect(counted(run)).toEqual(supports));
