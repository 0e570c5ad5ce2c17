import { aluminumEmt } from "./aluminumEmt";
import { aluminumRmc } from "./aluminumRmc";
import { coatedRmc } from "./coatedRmc";
import { emt } from "./emt";
import { ent } from "./byHand/ent";
import { fmc } from "./byHand/fmc";
import { imc } from "./imc";
import { lfmc } from "./byHand/lfmc";
import { lfncA } from "./byHand/lfncA";
import { lfncB } from "./byHand/lfncB";
import { pvc40 } from "./pvc40";
import { pvc80 } from "./pvc80";
import { rmc } from "./rmc";
import { rtrc } from "./rtrc";
import { stainlessRmc } from "./stainlessRmc";

/** Every kind of raceway by the name the tables show, in the trade's order. */
export const KINDS = {
  EMT: emt,
  "Aluminum EMT": aluminumEmt,
  IMC: imc,
  RMC: rmc,
  "Aluminum RMC": aluminumRmc,
  "Stainless RMC": stainlessRmc,
  "PVC-coated RMC": coatedRmc,
  "PVC 40": pvc40,
  "PVC 80": pvc80,
  RTRC: rtrc,
  FMC: fmc,
  LFMC: lfmc,
  "LFNC-A": lfncA,
  "LFNC-B": lfncB,
  ENT: ent,
} as const;
