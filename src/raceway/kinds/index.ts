import { aluminumEmt } from "./aluminumEmt";
import { coatedRmc } from "./coatedRmc";
import { emt } from "./emt";
import { imc } from "./imc";
import { pvc40 } from "./pvc40";
import { pvc80 } from "./pvc80";
import { rmc } from "./rmc";

/** Every kind of raceway by the name the tables show, in the trade's order. */
export const KINDS = {
  EMT: emt,
  "Aluminum EMT": aluminumEmt,
  IMC: imc,
  RMC: rmc,
  "PVC-coated RMC": coatedRmc,
  "PVC 40": pvc40,
  "PVC 80": pvc80,
} as const;
