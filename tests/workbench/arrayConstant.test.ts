import { splitArrayConstant } from "../../workbench/engine/functions/arrayConstant";

test.each([
  [
    "{1,2;3,4}",
    [
      ["1", "2"],
      ["3", "4"],
    ],
  ],
  ['{"a, b","c; d"}', [['"a, b"', '"c; d"']]],
  [
    '{ "a" , 2 ; TRUE , "" }',
    [
      ['"a"', "2"],
      ["TRUE", '""'],
    ],
  ],
  ['{"3\' 4"","x"}', [['"3\' 4""', '"x"']]],
  ['{"up 4\', saddle 3 up at 45";"{x}"}', [['"up 4\', saddle 3 up at 45"'], ['"{x}"']]],
  ["{7}", [["7"]]],
  ["{}", [[""]]],
])("%s", (source, rows) => {
  expect(splitArrayConstant(source)).toEqual(rows);
});
