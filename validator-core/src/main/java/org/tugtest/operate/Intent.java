package org.tugtest.operate;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.model.State;
import org.tugtest.network.Edge;

/** What a state sets and wants, apart from what then flows. */
final class Intent {
  private static final String ON = "on";
  private final Harness harness;
  private final @Nullable State state;
  private final Set<String> wanted = new HashSet<>();
  private final Set<String> running = new HashSet<>();
  private final Map<String, Double> volts = new HashMap<>();
  private final Map<String, String> positions = new HashMap<>();

  /** What a state wants; null: as drawn, with every device in its last position and all on. */
  Intent(Harness harness, @Nullable State state) {
    this.harness = harness;
    this.state = state;
    if (state != null) {
      add(state.on(), wanted);
      add(state.running(), running);
      state.volts().forEach((ref, value) -> volts.put(ref.text(), value));
      state.set().forEach((ref, position) -> positions.put(ref.text(), position));
    }
  }

  private static void add(List<Ref> refs, Set<String> texts) {
    refs.forEach(ref -> texts.add(ref.text()));
  }

  /** Whether a load or coil is meant to work; a free load never is. */
  boolean wanted(Edge.OfElement edge) {
    boolean free =
        edge.element() instanceof Element.Load load && load.use() == Element.Load.Use.FREE;
    boolean draws =
        edge.element() instanceof Element.Load || edge.element() instanceof Element.Coil;
    return draws && !free && (state == null || named(wanted, edge));
  }

  /** Whether a source gives: always, a generator only where it runs. */
  boolean gives(Edge.OfElement edge) {
    return edge.element() instanceof Element.Source source
        && (!source.generator() || state == null || named(running, edge));
  }

  /** The open volts of a source; empty when nothing gives them. */
  Optional<Double> openVolts(Edge.OfElement edge) {
    Double here = volts.get(edge.text());
    if (here == null) {
      here = volts.get(edge.device());
    }
    if (here == null && edge.element() instanceof Element.Source source) {
      here = source.volts();
    }
    return Optional.ofNullable(here);
  }

  /** Whether a contact is set by itself; empty when its device or its coil moves it. */
  Optional<Boolean> setByItself(Edge.OfElement edge) {
    return Optional.ofNullable(positions.get(edge.text())).map(ON::equals);
  }

  /** The position of a device: as the state says, else the first; as drawn the last. */
  String position(String device) {
    String set = positions.get(device);
    if (set != null) {
      return set;
    }
    Device found = harness.devices().get(device);
    DeviceType type = found == null ? null : harness.typeOf(found);
    List<String> all =
        type == null || type.positions().isEmpty() ? DeviceType.OFF_ON : type.positions();
    return all.get(state == null ? all.size() - 1 : 0);
  }

  private static boolean named(Set<String> texts, Edge.OfElement edge) {
    return texts.contains(edge.device()) || texts.contains(edge.text());
  }
}
