/** The rooms of src/ in their order: a file imports only from its own room and from rooms before it. */
const ROOMS = [
  ...[
    "units",
    "table",
    "memory",
    "geometry",
    "raceway",
    "wiring",
    "wiring/pull",
    "rules",
    "bends/shapes",
    "bends/groups",
    "bends/handbook",
    "bends/testBends",
    "route/text",
    "route",
  ],
  ...["shop/shoe", "shop/elbows", "shop/run", "shop/job", "shop/code"],
  ...["shop/schedule", "shop/bench", "shop/checks", "shop/ticket"],
  ...[
    "cutting/model",
    "cutting/greedy",
    "cutting/linear",
    "cutting/filling",
    "cutting/rests",
    "cutting/checking",
    "cutting",
  ],
  ...[
    "takeoff/amounts",
    "takeoff/lists",
    "takeoff/saw",
    "takeoff/cuts",
    "takeoff/sticks",
    "takeoff/lines",
    "takeoff/reports",
  ],
  "bid",
  ...["made/records", "made/counts", "made/standing", "made/learning"],
  ...["drawing/paper", "drawing/bend", "drawing/run", "drawing/bench", "drawing/job", "drawing/ticket"],
];

module.exports = { ROOMS };
