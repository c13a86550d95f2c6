package org.tugtest.model;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a device is made of.
 *
 * @param positions its switch positions, the first being at rest; {@code off, on} by default
 */
public record DeviceType(
    Map<String, Pin> pins,
    Map<String, Port> ports,
    List<String> positions,
    Map<String, Element> elements,
    @Nullable Double maxC,
    @Nullable Double grams) {

  /** The positions of a device that names none. */
  public static final List<String> OFF_ON = List.of("off", "on");

  public DeviceType {
    pins = Ordered.copyOf(pins);
    ports = Ordered.copyOf(ports);
    positions = List.copyOf(positions);
    elements = Ordered.copyOf(elements);
  }

  /**
   * A pin that a wire may reach with a terminal of its own.
   *
   * @param side null when not given
   * @param at node, if not where the device is
   * @param maxTerminals how many terminals it takes: as given, else 4 for a stud, else 1
   * @param inside a point that no wire reaches
   */
  public record Pin(
      @Nullable String family,
      @Nullable ContactSide side,
      @Nullable String at,
      int maxTerminals,
      boolean inside,
      @Nullable Double breakoutMm,
      @Nullable Double serviceMm) {}

  /**
   * The device's half of a connector.
   *
   * @param pins cavity to pin name, where the pin has not the cavity's name
   */
  public record Port(@Nullable String housing, Map<String, String> pins) {
    public Port {
      pins = Ordered.copyOf(pins);
    }

    /** The name of the pin behind a cavity. */
    public String pinAt(String cavity) {
      return pins.getOrDefault(cavity, cavity);
    }
  }
}
