/** Runs as drawings and models, in files. */
export { runsDxf } from "./dxf";
export { runsGlb } from "./gltf";
export { runsIfc, timeNow } from "./ifc";
export { runsObj } from "./obj";
