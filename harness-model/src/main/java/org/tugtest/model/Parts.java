package org.tugtest.model;

import java.util.Map;

/** The parts that the harness names, by kind and id. */
public record Parts(
    Map<String, WirePart> wires,
    Map<String, Housing> housings,
    Map<String, Terminal> terminals,
    Map<String, Seal> seals,
    Map<String, SplicePart> splices,
    Map<String, FusePart> fuses,
    Map<String, Covering> coverings,
    Map<String, Support> supports,
    Map<String, DeviceType> deviceTypes) {

  /** No parts. */
  public static final Parts NONE =
      new Parts(
          Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of());

  public Parts {
    wires = Ordered.copyOf(wires);
    housings = Ordered.copyOf(housings);
    terminals = Ordered.copyOf(terminals);
    seals = Ordered.copyOf(seals);
    splices = Ordered.copyOf(splices);
    fuses = Ordered.copyOf(fuses);
    coverings = Ordered.copyOf(coverings);
    supports = Ordered.copyOf(supports);
    deviceTypes = Ordered.copyOf(deviceTypes);
  }
}
