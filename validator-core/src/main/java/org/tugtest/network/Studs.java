package org.tugtest.network;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Harness;
import org.tugtest.model.Terminal;

/** How many terminals sit on a device pin, and how many it takes. */
public final class Studs {
  /** What a pin takes that no file lists: as one of no family. */
  private static final int UNLISTED = 4;

  private Studs() {}

  /**
   * The terminals on a pin.
   *
   * @param terminals on it: one for each wire end, fewer where one terminal takes several wires
   * @param allowed as many as it takes
   */
  public record Stack(int terminals, int allowed) {}

  /** Counts the terminals of these ends, all of which sit on {@code pin} of a device. */
  public static Stack stack(Harness harness, Point pin, List<WireEnd> ends) {
    Map<String, Integer> sharing = new TreeMap<>();
    int terminals = 0;
    for (WireEnd end : ends) {
      String id = end.terminal();
      Terminal terminal = id == null ? null : harness.parts().terminals().get(id);
      if (terminal == null || terminal.maxWires() < 2) {
        terminals++;
      } else {
        sharing.merge(terminal.id(), 1, Integer::sum);
      }
    }
    for (Map.Entry<String, Integer> shared : sharing.entrySet()) {
      Terminal terminal = harness.parts().terminals().get(shared.getKey());
      int each = terminal == null ? 1 : terminal.maxWires();
      terminals += (shared.getValue() + each - 1) / each;
    }
    return new Stack(terminals, allowed(harness, pin));
  }

  private static int allowed(Harness harness, Point pin) {
    Device device = harness.devices().get(pin.owner());
    DeviceType type = device == null ? null : harness.typeOf(device);
    DeviceType.Pin listed = type == null ? null : type.pins().get(pin.name());
    return listed == null ? UNLISTED : listed.maxTerminals();
  }
}
