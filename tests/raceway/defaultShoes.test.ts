/**
 * Built-in shoes. Radius: NEC chapter 9, table 2, one-shot. Deduct: EMT 5, 6, 8 and rigid 6, 8 as a journeyman's published
 * notes have them (natac13); 11 for EMT 1-1/4 and RMC 1 from memory; IMC as RMC, common practice, no source.
 */
import { NotListedError } from "../../src/units/errors";
import { defaultShoe } from "../../src/raceway/defaultShoes";

test.each([
  ["EMT", "1/2", 4, 5],
  ["EMT", "3/4", 4.5, 6],
  ["EMT", "1", 5.75, 8],
  ["EMT", "1-1/4", 7.25, 11],
  ["IMC", "1/2", 4, 6],
  ["IMC", "3/4", 4.5, 8],
  ["IMC", "1", 5.75, 11],
  ["RMC", "1/2", 4, 6],
  ["RMC", "3/4", 4.5, 8],
  ["RMC", "1", 5.75, 11],
] as const)("%s %s: radius %f, deduct %f", (raceway, size, radius, deduct) => {
  expect(defaultShoe(raceway, size)).toMatchObject({ radius, deduct, springback: 0 });
});

test("PVC-coated conduit takes RMC's shoe one size up, with its own outside diameter", () => {
  expect(defaultShoe("PVC-coated RMC", "1/2")).toEqual({
    radius: 4.5,
    deduct: 8,
    outsideDiameter: 0.92,
    springback: 0,
    source:
      "The shoe of RMC 3/4, one size up. Radius: NEC chapter 9, table 2, one-shot. Deduct: Hand bending charts, " +
      "a journeyman's openly published notes (natac13); an editable default, measure your own shoe.",
  });
  expect(defaultShoe("PVC-coated RMC", "3/4")).toMatchObject({ radius: 5.75, deduct: 11, outsideDiameter: 1.13 });
});

test("a deduct from memory or practice says so", () => {
  expect(defaultShoe("EMT", "1-1/4").source).toMatch(/From memory/);
  expect(defaultShoe("IMC", "1").source).toMatch(/Common practice, no source/);
});

const ADVICE = "Give its radius and deduct in the Shoes table.";

test.each([
  ["EMT", "2", `There is no built-in shoe for EMT 2: only sizes 1/2, 3/4, 1, 1-1/4 have one. ${ADVICE}`],
  ["RMC", "1-1/4", `There is no built-in shoe for RMC 1-1/4: only sizes 1/2, 3/4, 1 have one. ${ADVICE}`],
  ["PVC-coated RMC", "1", `There is no built-in shoe for PVC-coated RMC 1: only sizes 1/2, 3/4 have one. ${ADVICE}`],
  ["PVC-coated RMC", "6", `There is no built-in shoe for PVC-coated RMC 6: only sizes 1/2, 3/4 have one. ${ADVICE}`],
  ["PVC 40", "1/2", `There is no built-in shoe for PVC 40 1/2: no size has one. ${ADVICE}`],
] as const)("%s %s has none", (raceway, size, message) => {
  expect(() => defaultShoe(raceway, size)).toThrow(new NotListedError(message));
});
