package org.tugtest.model;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Everything the files of one root say of one vehicle (or one variant of it). Maps are in natural
 * order of their ids, so the order in the files never matters.
 *
 * @param root path of the root file, relative to the harness folder
 * @param files every file read for this root, the root first, the others sorted
 * @param sketch connectors, cavities and pins that wires name exist by being named
 */
public record Harness(
    String root,
    List<String> files,
    @Nullable String title,
    @Nullable String revision,
    boolean sketch,
    Defaults defaults,
    Map<String, Loom> looms,
    Parts parts,
    Map<String, Device> devices,
    Map<String, String> fitted,
    Map<String, Connector> connectors,
    Map<String, Splice> splices,
    Map<String, Wire> wires,
    Map<String, Group> groups,
    Layout layout,
    Map<String, Zone> zones,
    Map<String, State> states,
    Map<String, RuleLimits> limits,
    Map<String, Waiver> waivers,
    Map<String, Expectation> expectations) {

  public Harness {
    files = List.copyOf(files);
    looms = Ordered.copyOf(looms);
    devices = Ordered.copyOf(devices);
    fitted = Ordered.copyOf(fitted);
    connectors = Ordered.copyOf(connectors);
    splices = Ordered.copyOf(splices);
    wires = Ordered.copyOf(wires);
    groups = Ordered.copyOf(groups);
    zones = Ordered.copyOf(zones);
    states = Ordered.copyOf(states);
    limits = Ordered.copyOf(limits);
    waivers = Ordered.copyOf(waivers);
    expectations = Ordered.copyOf(expectations);
  }

  /** A harness that says nothing. */
  public static Harness empty(String root) {
    return new Harness(
        root,
        List.of(),
        null,
        null,
        false,
        Defaults.FORMAT,
        Map.of(),
        Parts.NONE,
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Layout.NONE,
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of());
  }

  /** The same harness with these wires in place of its own. */
  public Harness withWires(Map<String, Wire> others) {
    return with(devices, fitted, connectors, splices, others, layout, states);
  }

  /** The same harness with these connectors in place of its own. */
  public Harness withConnectors(Map<String, Connector> others) {
    return with(devices, fitted, others, splices, wires, layout, states);
  }

  /** The same harness with these splices in place of its own. */
  public Harness withSplices(Map<String, Splice> others) {
    return with(devices, fitted, connectors, others, wires, layout, states);
  }

  /** The same harness with these devices in place of its own. */
  public Harness withDevices(Map<String, Device> others) {
    return with(others, fitted, connectors, splices, wires, layout, states);
  }

  /** The same harness with these fuses in its ways. */
  public Harness withFitted(Map<String, String> others) {
    return with(devices, others, connectors, splices, wires, layout, states);
  }

  /** The same harness on another layout. */
  public Harness withLayout(Layout other) {
    return with(devices, fitted, connectors, splices, wires, other, states);
  }

  /** The same harness with these states in place of its own. */
  public Harness withStates(Map<String, State> others) {
    return with(devices, fitted, connectors, splices, wires, layout, others);
  }

  private Harness with(
      Map<String, Device> itsDevices,
      Map<String, String> itsFuses,
      Map<String, Connector> itsConnectors,
      Map<String, Splice> itsSplices,
      Map<String, Wire> itsWires,
      Layout itsLayout,
      Map<String, State> itsStates) {
    return new Harness(
        root,
        files,
        title,
        revision,
        sketch,
        defaults,
        looms,
        parts,
        itsDevices,
        itsFuses,
        itsConnectors,
        itsSplices,
        itsWires,
        groups,
        itsLayout,
        zones,
        itsStates,
        limits,
        waivers,
        expectations);
  }

  /** The type a device has: the named one, or its own fields; null when the type is not known. */
  public @Nullable DeviceType typeOf(Device device) {
    return device.type() == null ? device.own() : parts.deviceTypes().get(device.type());
  }
}
