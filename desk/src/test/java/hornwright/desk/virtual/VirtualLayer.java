package hornwright.desk.virtual;

import hornwright.bench.horn.Layer;

/** One piece at a stop: as it left the factory, as it is found, and the share a new one of its kind will lose, mm. */
record VirtualLayer(Layer layer, double built, double now, double willLose) {}
