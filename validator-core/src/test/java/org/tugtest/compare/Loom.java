package org.tugtest.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckResult;
import org.tugtest.compare.entry.Head;
import org.tugtest.compare.entry.Sections;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.model.Connector;
import org.tugtest.model.ContactSide;
import org.tugtest.model.Defaults;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.FusePart;
import org.tugtest.model.Harness;
import org.tugtest.model.Housing;
import org.tugtest.model.Layout;
import org.tugtest.model.Ref;
import org.tugtest.model.RuleLimits;
import org.tugtest.model.Splice;
import org.tugtest.model.State;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.read.ReadHarness;
import org.tugtest.rule.Judged;

/**
 * A harness that can be altered, as entries by section and id, and a generator of odd ones: ports
 * and plain pins, inline pairs, plugs without a mate, splices, loops, wires side by side, wires
 * from a contact to itself, ends that name nothing.
 */
final class Loom {
  static final List<String> COLOURS = List.of("RD", "BK", "YE", "GN/WH");
  private static final List<String> CAVITIES = List.of("1", "2", "3", "4", "5", "6");
  final Map<String, Map<String, Object>> entries = new HashMap<>();

  private Loom() {
    Sections.NAMES.forEach(section -> entries.put(section, new TreeMap<>()));
    of(Sections.HEAD).put(Sections.NO_ID, new Head("odd", null, false));
    of(Sections.DEFAULTS).put(Sections.NO_ID, Defaults.FORMAT);
  }

  Map<String, Object> of(String section) {
    return entries.get(section);
  }

  <T> T get(String section, String id, Class<T> type) {
    return type.cast(of(section).get(id));
  }

  List<String> ids(String section) {
    return new ArrayList<>(of(section).keySet());
  }

  Loom copy() {
    Loom copy = new Loom();
    entries.forEach((section, map) -> copy.entries.put(section, new TreeMap<>(map)));
    return copy;
  }

  Harness harness() {
    return Sections.harness(Harness.empty(Judged.ROOT), entries);
  }

  /** The revision, without any rule having run. */
  static Snapshot snapshot(String label, Harness harness) {
    return Snapshot.of(
        label,
        Facts.of(ReadHarness.unwritten(harness), Judged.TODAY, KnownRules.NONE),
        new CheckResult(harness.root(), List.of(), List.of(), List.of(), List.of(), List.of()));
  }

  static Comparison compare(Loom before, Loom after) {
    return Comparison.of(snapshot("before", before.harness()), snapshot("after", after.harness()));
  }

  static Wire wire(
      String id,
      @Nullable Ref from,
      @Nullable Ref to,
      @Nullable String part,
      @Nullable String colour,
      @Nullable String circuit,
      @Nullable Double cutMm) {
    return new Wire(
        id, null, from, to, part, null, null, colour, null, circuit, List.of(), false, cutMm, null,
        null, null, null, null, null, null);
  }

  static Connector connector(String id, @Nullable String housing, @Nullable String mates) {
    return new Connector(
        id,
        null,
        housing,
        mates == null ? null : Ref.parse(mates),
        null,
        null,
        List.of(),
        List.of(),
        false,
        Map.of(),
        null,
        null,
        null,
        null,
        Map.of());
  }

  static Splice splice(String id, @Nullable String at) {
    return new Splice(id, null, at, null, null, null, false, List.of(), null);
  }

  static Housing housing(String id, ContactSide side) {
    return new Housing(
        id,
        side,
        List.of(CAVITIES),
        null,
        Map.of(),
        false,
        null,
        List.of(),
        List.of(),
        List.of(),
        false,
        null,
        null);
  }

  /** A random one of about {@code size} wires. */
  static Loom random(Random random, int size) {
    Loom loom = new Loom();
    loom.of("parts/wires").put("w1", part("w1", 1.0));
    loom.of("parts/wires").put("w2", part("w2", 2.5));
    loom.of("parts/housings").put("skt", housing("skt", ContactSide.SOCKET));
    loom.of("parts/housings").put("other", housing("other", ContactSide.SOCKET));
    loom.of("parts/housings").put("pin", housing("pin", ContactSide.PIN));
    for (int amps : new int[] {5, 10, 15}) {
      String id = "blade-" + amps;
      loom.of("parts/fuses")
          .put(id, new FusePart(id, (double) amps, null, null, null, null, List.of()));
    }
    for (String node : List.of("n1", "n2", "n3")) {
      loom.of("nodes").put(node, new Layout.Node(node, null, true, List.of(), List.of()));
    }
    loom.of("states")
        .put("on", new State("on", Map.of(), List.of(), List.of(), Map.of(), null, false));
    loom.of("limits")
        .put("wire-repeated", new RuleLimits("wire-repeated", "warning", Map.of(), Map.of()));
    int devices = 2 + random.nextInt(Math.max(1, size / 6));
    for (int i = 1; i <= devices; i++) {
      loom.device(random, "D" + i, i);
    }
    int pairs = random.nextInt(Math.max(1, size / 6) + 1);
    for (int i = 1; i <= pairs; i++) {
      loom.of("connectors").put("IA" + i, connector("IA" + i, "skt", "IB" + i));
      loom.of("connectors").put("IB" + i, connector("IB" + i, "pin", null));
    }
    int open = random.nextInt(3);
    for (int i = 1; i <= open; i++) {
      loom.of("connectors").put("O" + i, connector("O" + i, "skt", null));
    }
    int splices = random.nextInt(Math.max(1, size / 5) + 1);
    for (int i = 1; i <= splices; i++) {
      loom.of("splices").put("S" + i, splice("S" + i, random.nextBoolean() ? "n1" : null));
    }
    boolean circuits = random.nextBoolean();
    List<Ref> ends = loom.ends();
    for (int i = 1; i <= size; i++) {
      Ref from = ends.get(random.nextInt(ends.size()));
      Ref to = ends.get(random.nextInt(ends.size()));
      if (random.nextInt(40) == 0) {
        to = random.nextBoolean() ? null : Ref.parse("NOWHERE:1");
      }
      String id = "W" + i;
      loom.of("wires")
          .put(
              id,
              wire(
                  id,
                  from,
                  to,
                  random.nextInt(8) == 0 ? null : random.nextBoolean() ? "w1" : "w2",
                  random.nextInt(8) == 0 ? null : COLOURS.get(random.nextInt(COLOURS.size())),
                  circuits ? "c" + i : null,
                  random.nextBoolean() ? null : 100.0 * (1 + random.nextInt(20))));
    }
    return loom;
  }

  private void device(Random random, String id, int number) {
    Map<String, Element> elements = new TreeMap<>();
    Map<String, DeviceType.Port> ports = new TreeMap<>();
    Map<String, DeviceType.Pin> pins = new TreeMap<>();
    if (random.nextBoolean()) {
      Map<String, String> names = random.nextBoolean() ? Map.of("1", "a", "2", "b") : Map.of();
      ports.put("A", new DeviceType.Port("pin", names));
      of("connectors").put("X" + number, connector("X" + number, "skt", id + ".A"));
      String a = names.isEmpty() ? "1" : "a";
      elements.put(
          "l",
          new Element.Load(
              a,
              "3",
              1.0,
              null,
              null,
              null,
              Element.Load.Use.SWITCHED,
              null,
              null,
              100,
              false,
              false,
              null,
              null,
              null,
              null));
    } else {
      for (String pin : List.of("in", "1", "2")) {
        pins.put(pin, new DeviceType.Pin(null, null, null, 9, false, null, null));
      }
      elements.put("f1", new Element.Fuse("in", "1", null, null, false));
      elements.put("c", new Element.Contact("in", "2", null, false, List.of("on"), false, null, 0));
      if (random.nextBoolean()) {
        of("fitted").put(id + ".f1", "blade-5");
      }
    }
    of("devices")
        .put(
            id,
            new Device(
                id,
                null,
                new DeviceType(pins, ports, DeviceType.OFF_ON, elements, null, null),
                null,
                Map.of()));
  }

  private static WirePart part(String id, double area) {
    return new WirePart(
        id, area, null, 125.0, WirePart.Wall.THIN, null, null, null, null, null, null, true);
  }

  /** Every contact and splice that a wire may end on. */
  List<Ref> ends() {
    List<Ref> ends = new ArrayList<>();
    for (String id : ids("connectors")) {
      CAVITIES.forEach(cavity -> ends.add(Ref.pin(id, cavity)));
    }
    ids("splices").forEach(id -> ends.add(Ref.parse(id)));
    for (String id : ids("devices")) {
      DeviceType type = get("devices", id, Device.class).own();
      if (type != null) {
        type.pins().keySet().forEach(pin -> ends.add(Ref.pin(id, pin)));
      }
    }
    return ends;
  }
}
