/** A worksheet function that built-in functions can express: for people whose workbooks may not use an add-in. */
export interface PlainFunction {
  /** The add-in's function it gives the same values as; the workbook has it under this name, without CONDUIT. */
  name: string;
  inputs: readonly { name: string; unit: string; example: number }[];
  unit: string;
  /** Built-in functions over the inputs' names. */
  expression: string;
  /** What must hold for the inputs, and what is said where it does not. */
  holds: string;
  otherwise: string;
  /** The add-in's own call; its name and inputs, when not told. */
  addIn?: string;
}

const input = (name: string, unit: string, example: number) => ({ name, unit, example });
const angle = input("angle", "°", 30);
const radius = input("radius", "in, 0 for sharp corners", 4);
const arcRadius = input("radius", "in", 4);
const rise = input("rise", "in", 6);
const od = input("diameter", "in, outside", 0.706);

/** In a formula: what a bend saves of conduit against going by its corner, and the rise of two arcs that touch. */
const gain = (a: string) => `(2*radius*TAN(RADIANS(${a})/2)-radius*RADIANS(${a}))`;
const leastRise = "2*radius*(1-COS(RADIANS(angle)))";
/** Height of a saddle's center corner, over its crest and in all. */
const corner = "(height+radius*(1/COS(RADIANS(angle/2))-1))";
const saddleFits = `${corner}>=radius*(TAN(RADIANS(angle/4))+TAN(RADIANS(angle/2)))*SIN(RADIANS(angle/2))`;

const offsetHolds = `AND(rise>0,angle>0,angle<=90,radius>=0,rise>=${leastRise})`;
const offsetWords = "rise must be above 0 and leave room for both arcs; angle above 0° to 90°";
const bendHolds = "AND(angle>0,angle<180,radius>0)";
const bendWords = "angle must be above 0° and below 180°, radius above 0";
const saddleHolds = `AND(height>0,angle>0,angle<180,radius>=0,${saddleFits})`;
const saddleWords = "height must be above 0 and leave room for the arcs; angle above 0° and below 180°";

/** Formulas as the functions' own documentation gives them; a test holds each to the add-in's values. */
export const PLAIN_FUNCTIONS: readonly PlainFunction[] = [
  fn(
    "BEND.ARC",
    [angle, arcRadius],
    "in",
    "radius*RADIANS(angle)",
    "AND(angle>0,angle<=180,radius>0)",
    "angle must be above 0° to 180°, radius above 0",
  ),
  fn("BEND.SETBACK", [angle, arcRadius], "in", "radius*TAN(RADIANS(angle)/2)", bendHolds, bendWords),
  fn("BEND.GAIN", [angle, arcRadius], "in", gain("angle"), bendHolds, bendWords),
  {
    ...fn(
      "BEND.GAIN.BACK",
      [angle, arcRadius, od],
      "in",
      `${gain("angle")}+diameter*TAN(RADIANS(angle)/2)`,
      bendHolds,
      bendWords,
    ),
    addIn: "BEND.GAIN(angle,radius,diameter)",
  },
  fn(
    "BEND.RELEASED",
    [input("radius", "in, held in the shoe", 4), angle, input("springback", "°", 3)],
    "in",
    "radius*(angle+springback)/angle",
    "AND(radius>0,angle>0,angle<180,springback>=0,springback<=45)",
    `${bendWords}, springback 0° to 45°`,
  ),
  fn(
    "OFFSET.MULTIPLIER",
    [angle],
    "",
    "1/SIN(RADIANS(angle))",
    "AND(angle>0,angle<=90)",
    "angle must be above 0° to 90°",
  ),
  fn(
    "OFFSET.SPACING",
    [rise, angle, radius],
    "in",
    `rise/SIN(RADIANS(angle))-${gain("angle")}`,
    offsetHolds,
    offsetWords,
  ),
  fn(
    "OFFSET.SHRINK",
    [rise, angle, radius],
    "in",
    `rise*TAN(RADIANS(angle)/2)-2*${gain("angle")}`,
    offsetHolds,
    offsetWords,
  ),
  fn(
    "OFFSET.ANGLE",
    [rise, input("spacing", "in", 12)],
    "°, sharp corners",
    "DEGREES(ASIN(rise/spacing))",
    "AND(rise>0,spacing>=rise)",
    "rise must be above 0, spacing at least the rise",
  ),
  fn(
    "OFFSET.STAGGER",
    [input("spacing", "in, center to center", 4), angle],
    "in",
    "spacing*TAN(RADIANS(angle)/2)",
    "AND(spacing>0,angle>0,angle<180)",
    "spacing must be above 0, angle above 0° and below 180°",
  ),
  rolling("OFFSET.ROLLING.TRUE", "in", "SQRT(rise^2+roll^2)", 1),
  rolling("OFFSET.ROLLING.PLANE", "°", "DEGREES(ATAN2(rise,roll))", 2),
  fn(
    "SADDLE.SPACING",
    [input("height", "in, to the crest", 4), { ...angle, example: 45 }, radius],
    "in",
    `radius*TAN(RADIANS(angle/4))+${corner}/SIN(RADIANS(angle/2))-${gain("angle/2")}-${gain("angle")}/2`,
    saddleHolds,
    saddleWords,
  ),
  fn(
    "SADDLE.SHRINK",
    [input("height", "in, to the crest", 4), { ...angle, example: 45 }, radius],
    "in",
    `${corner}*TAN(RADIANS(angle/4))-${gain("angle/2")}-${gain("angle")}/2`,
    saddleHolds,
    saddleWords,
  ),
  fn(
    "STUB.DEDUCT",
    [input("radius", "in", 4), od, input("lead", "in, arrow to start of bend", 0.647)],
    "in",
    "radius+diameter/2+lead",
    "AND(radius>0,diameter>0)",
    "radius and diameter must be above 0",
  ),
  fn(
    "STUB.MARK",
    [input("stub", "in", 10), input("deduct", "in", 5)],
    "in",
    "stub-deduct",
    "AND(deduct>=0,stub>deduct)",
    "stub must be above the deduct",
  ),
  fn(
    "KICK.RISE",
    [input("length", "in", 24), angle, radius],
    "in",
    "radius*(1-COS(RADIANS(angle)))+(length-radius*RADIANS(angle))*SIN(RADIANS(angle))",
    "AND(angle>0,angle<=90,radius>=0,length>0,length>=radius*RADIANS(angle))",
    "length must be at least the arc, angle above 0° to 90°",
  ),
  fn(
    "KICK.LENGTH",
    [rise, angle, radius],
    "in",
    "radius*RADIANS(angle)+(rise-radius*(1-COS(RADIANS(angle))))/SIN(RADIANS(angle))",
    "AND(rise>0,angle>0,angle<=90,radius>=0,rise>=radius*(1-COS(RADIANS(angle))))",
    "rise must be above 0 and at least what the arc rises, angle above 0° to 90°",
  ),
];

function fn(
  name: string,
  inputs: PlainFunction["inputs"],
  unit: string,
  expression: string,
  holds: string,
  otherwise: string,
): PlainFunction {
  return { name, inputs, unit, expression, holds, otherwise };
}

function rolling(name: string, unit: string, expression: string, column: number): PlainFunction {
  const inputs = [input("rise", "in", 8), input("roll", "in", 12)];
  const words = "rise and roll must not both be 0";
  const addIn = `INDEX(OFFSET.ROLLING(rise,roll),2,${column})`;
  return { ...fn(name, inputs, unit, expression, "NOT(AND(rise=0,roll=0))", words), addIn };
}
