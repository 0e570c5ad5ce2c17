/** What people write for a step, and what they are offered or understood as. */
import { lengthsAsIn } from "../../src/route/text/ownWords";
import { readRoute } from "../../src/route/text/readRoute";
import { RouteError } from "../../src/route/text/routeError";
import { refuseShortLegs } from "../../src/route/problems";
import { resolveRoute } from "../../src/route/resolveRoute";

function refusal(route: string): RouteError {
  try {
    readRoute(route);
  } catch (error) {
    if (error instanceof RouteError) return error;
  }
  throw new Error(`${route} was read`);
}

test.each([
  ["stub up 10, east 20", "stub 10 up, east 20"],
  ["stub down 3' 6\", east 20", "stub 42 down, east 20"],
  ["east 60, 3 point saddle 3 up at 45, ahead 60", "east 60, saddle 3 up at 45, ahead 60"],
  ["east 60, three-bend saddle 3 up at 45, ahead 60", "east 60, saddle 3 up at 45, ahead 60"],
  ["east 60, 4-point saddle 3 up over 12 at 30, ahead 60", "east 60, saddle 3 up over 12 at 30, ahead 60"],
])("%p is understood as %p", (said, same) => {
  expect(readRoute(said)).toEqual(readRoute(same));
});

test.each([
  ["10' east 8'", [`up 10', east 8'`]],
  ["up 10', 8' east 4'", [`ahead 8', east 4'`]],
  ["up 10 east 8'", [`up 10, east 8'`]],
  ["up 3' 4-1/2\" offset 6 east at 30 ahead 40", [`up 3' 4-1/2", offset 6 east at 30, ahead 40`]],
  ["12' 6\" north", [`north 12' 6"`]],
  ["up 40, 45 east", ["east 45", "bend 45 east"]],
  ["up 40, ofset 6 east at 30, ahead 40", ["offset 6 east at 30"]],
  ["up 40, offset east 6 at 30, ahead 40", ["offset 6 east at 30"]],
  ["up 40, esat 40", ["east 40"]],
  ["u 40", ["up 40"]],
  ["n10'", ["north10'"]],
  ["up 40, straight 10", ["ahead 10"]],
  ["east 40, bend up 30, ahead 9", ["bend 30 up"]],
])("%p is answered with %p", (route, meant) => {
  const error = refusal(route);
  expect(error.meant).toEqual(meant);
  expect(error.message).toContain(`did you mean "${meant[0]}"`);
});

test("a four-point saddle without the width of its obstacle is not taken for a three-bend one", () => {
  expect(() => readRoute("east 60, 4 point saddle 3 up at 30, ahead 60")).toThrow(
    /as in 4-point saddle 3 up over 12 at 30/,
  );
});

test("a three-point saddle has no flat top", () => {
  expect(() => readRoute("east 60, 3 point saddle 3 up over 12 at 30, ahead 60")).toThrow();
});

test.each(["flarp 10", "left 40", "10", "up 40,5", "???", "bend 30"])("nothing is made up for %p", (route) => {
  expect(refusal(route).meant).toEqual([]);
});

test("a step that cannot be walked is told in the words of its writer", () => {
  expect(() => resolveRoute(readRoute(`up 4', Down  1.2 m`), 4)).toThrow(`step 2: got "Down 1.2 m"; expected`);
});

test("a leg too short is told in the unit of the route", () => {
  // Setbacks of a 90 and a 90 on a 4 in. radius take 8 in. = 203.2 mm of the leg; 0.1 m is there.
  const route = readRoute("up 1.5 m, east 0.1 m, up 1.5 m");
  const refuse = () => refuseShortLegs(resolveRoute(route, 4).pulls, lengthsAsIn(route));
  expect(refuse).toThrow("is 0.1 m long, but its bends need 0.203 m for their setbacks: 0.103 m short.");
});
