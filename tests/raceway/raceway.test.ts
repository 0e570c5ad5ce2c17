import { RACEWAYS, readRaceway } from "../../src/raceway/raceway";

test.each([
  ["EMT", "EMT"],
  [" emt ", "EMT"],
  ["thinwall", "EMT"],
  ["Electrical Metallic Tubing", "EMT"],
  ["imc", "IMC"],
  ["Intermediate metal conduit", "IMC"],
  ["rigid", "RMC"],
  ["GRC", "RMC"],
  ["Galvanized rigid", "RMC"],
  ["PVC-coated RMC", "PVC-coated RMC"],
  ["PVC coated rigid", "PVC-coated RMC"],
  ["pvc 40", "PVC 40"],
  ["Sch. 40 PVC", "PVC 40"],
  ["PVC Schedule 80", "PVC 80"],
  ["Aluminum rigid", "Aluminum RMC"],
  ["stainless steel RMC", "Stainless RMC"],
  ["flex", "FMC"],
  ["Liquidtight flexible metal conduit", "LFMC"],
  ["LFNC B", "LFNC-B"],
  ["ent", "ENT"],
  ["fiberglass", "RTRC"],
])("%s is %s", (text, raceway) => {
  expect(readRaceway(text)).toBe(raceway);
});

test("every kind reads itself", () => {
  expect(RACEWAYS.map((raceway) => readRaceway(raceway))).toEqual(RACEWAYS);
});

const KNOWN =
  "EMT, Aluminum EMT, IMC, RMC, Aluminum RMC, Stainless RMC, PVC-coated RMC, PVC 40, PVC 80, RTRC, FMC, LFMC, LFNC-A, LFNC-B or ENT";

test.each([
  ["copper", `raceway must be ${KNOWN}; got "copper".`],
  ["liquidtight", `raceway must be ${KNOWN}; got "liquidtight".`],
  ["PVC", `raceway must be ${KNOWN}; got "PVC". Write the schedule too.`],
  ["", `raceway must be ${KNOWN}; got an empty cell.`],
  [null, `raceway must be ${KNOWN}; got an empty cell.`],
  [40, `raceway must be ${KNOWN}; got 40.`],
  ["constructor", `raceway must be ${KNOWN}; got "constructor".`],
])("%p is refused", (value, message) => {
  expect(() => readRaceway(value)).toThrow(message);
});

test("the argument is named as it is called", () => {
  expect(() => readRaceway("copper", "Raceway")).toThrow(/^Raceway must be/);
});
