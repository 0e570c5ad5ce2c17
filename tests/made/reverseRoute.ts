const OPPOSITE: Record<string, string> = {
  ...{ up: "down", down: "up", east: "west", west: "east", north: "south", south: "north" },
};

/** A route of plain legs walked from its far end. */
export const reverseRoute = (route: string): string =>
  route
    .split(", ")
    .reverse()
    .map((leg) => leg.replace(/^\w+/, (way) => OPPOSITE[way]!))
    .join(", ");
