package org.tugtest.model;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A device of the vehicle.
 *
 * @param type id of a device type; null when the device carries the fields itself
 * @param own those fields; null when {@code type} is given
 * @param at node
 * @param boltedTo own pin to a pin elsewhere: metal to metal, no wire
 */
public record Device(
    String id,
    @Nullable String type,
    @Nullable DeviceType own,
    @Nullable String at,
    Map<String, Ref> boltedTo) {

  public Device {
    boltedTo = Ordered.copyOf(boltedTo);
  }
}
