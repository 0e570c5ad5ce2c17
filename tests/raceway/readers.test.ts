/** Whatever stands in a cell, a reader gives a value or an error meant for the user, never a fault of the program. */
import fc from "fast-check";
import { isUserError } from "../../src/units/errors";
import { CONDUCTOR_SIZES } from "../../src/wiring/conductors";
import { readConductors } from "../../src/wiring/readConductors";
import { readEdition } from "../../src/raceway/code/edition";
import { readEntries, readPullKind } from "../../src/raceway/code/pullBox";
import { readRaceway } from "../../src/raceway/raceway";
import { readTradeSize } from "../../src/raceway/tradeSize";

const READERS = { readConductors, readEdition, readEntries, readPullKind, readRaceway, readTradeSize };

const cell = fc.oneof(
  fc.string({ unit: "grapheme" }),
  fc.stringMatching(/^[0-9#xX/ \-+,"'.½awgTHNW]{0,12}$/),
  fc.double(),
  fc.boolean(),
  fc.constantFrom(null, undefined, "", "__proto__", "toString"),
);
const anything = fc.oneof(cell, fc.array(fc.array(cell, { maxLength: 3 }), { maxLength: 3 }));

test.each(Object.entries(READERS))("%s never fails in any other way", (_, read) => {
  fc.assert(
    fc.property(anything, (value) => {
      try {
        expect(read(value)).toBeDefined();
      } catch (error) {
        if (!isUserError(error)) throw error;
        expect(error.message).toMatch(/\S/);
      }
    }),
    { numRuns: 300 },
  );
});

test("conductors that are written out read back as they were", () => {
  const kind = fc.record({
    count: fc.integer({ min: 1, max: 40 }),
    size: fc.constantFrom(...CONDUCTOR_SIZES),
    insulation: fc.constantFrom("THHN", "XHHW"),
  });
  fc.assert(
    fc.property(fc.array(kind, { minLength: 1, maxLength: 5 }), (kinds) => {
      const text = kinds.map(({ count, size, insulation }) => `${count} #${size} ${insulation}`).join(" + ");
      expect(readConductors(text)).toMatchObject(kinds);
      expect(
        readConductors(kinds.map(({ count, size, insulation }) => [count, `${size} ${insulation}`])),
      ).toMatchObject(kinds);
    }),
  );
});
