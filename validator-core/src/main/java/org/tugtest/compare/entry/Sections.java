package org.tugtest.compare.entry;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Covering;
import org.tugtest.model.Defaults;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Expectation;
import org.tugtest.model.FusePart;
import org.tugtest.model.Group;
import org.tugtest.model.Harness;
import org.tugtest.model.Housing;
import org.tugtest.model.Layout;
import org.tugtest.model.Loom;
import org.tugtest.model.Parts;
import org.tugtest.model.RuleLimits;
import org.tugtest.model.Seal;
import org.tugtest.model.Splice;
import org.tugtest.model.SplicePart;
import org.tugtest.model.State;
import org.tugtest.model.Support;
import org.tugtest.model.Terminal;
import org.tugtest.model.Waiver;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.model.Zone;

/**
 * A harness as entries by section and id. Sections are named as in place strings ({@code
 * parts/wires}, {@code nodes}); what has no id stands under the empty one, in {@link #HEAD} and
 * {@link #DEFAULTS}. Which file an entry stands in is not part of it.
 */
public final class Sections {
  /** Title, revision and the like: a {@link Head}. */
  public static final String HEAD = "harness";

  /** The defaults. */
  public static final String DEFAULTS = "defaults";

  /** The one id in a section that has no ids. */
  public static final String NO_ID = "";

  /** Every section, in the order of the format. */
  public static final List<String> NAMES =
      List.of(
          HEAD,
          DEFAULTS,
          "looms",
          "parts/wires",
          "parts/housings",
          "parts/terminals",
          "parts/seals",
          "parts/splices",
          "parts/fuses",
          "parts/coverings",
          "parts/supports",
          "parts/deviceTypes",
          "devices",
          "fitted",
          "connectors",
          "splices",
          "wires",
          "groups",
          "nodes",
          "segments",
          "zones",
          "states",
          "limits",
          "waivers",
          "expectations");

  private Sections() {}

  /** The entries of a harness, every section present. */
  public static Map<String, Map<String, Object>> of(Harness harness) {
    Map<String, Map<String, Object>> all = new LinkedHashMap<>();
    all.put(HEAD, Map.of(NO_ID, new Head(harness.title(), harness.revision(), harness.sketch())));
    all.put(DEFAULTS, Map.of(NO_ID, harness.defaults()));
    Parts parts = harness.parts();
    put(all, "looms", harness.looms());
    put(all, "parts/wires", parts.wires());
    put(all, "parts/housings", parts.housings());
    put(all, "parts/terminals", parts.terminals());
    put(all, "parts/seals", parts.seals());
    put(all, "parts/splices", parts.splices());
    put(all, "parts/fuses", parts.fuses());
    put(all, "parts/coverings", parts.coverings());
    put(all, "parts/supports", parts.supports());
    put(all, "parts/deviceTypes", parts.deviceTypes());
    put(all, "devices", harness.devices());
    put(all, "fitted", harness.fitted());
    put(all, "connectors", harness.connectors());
    put(all, "splices", harness.splices());
    put(all, "wires", harness.wires());
    put(all, "groups", harness.groups());
    put(all, "nodes", harness.layout().nodes());
    put(all, "segments", harness.layout().segments());
    put(all, "zones", harness.zones());
    put(all, "states", harness.states());
    put(all, "limits", harness.limits());
    put(all, "waivers", harness.waivers());
    put(all, "expectations", harness.expectations());
    return all;
  }

  /** A harness of these entries, with root and files of {@code like}. */
  public static Harness harness(Harness like, Map<String, Map<String, Object>> entries) {
    Head head = (Head) entries.get(HEAD).get(NO_ID);
    return new Harness(
        like.root(),
        like.files(),
        head.title(),
        head.revision(),
        head.sketch(),
        (Defaults) entries.get(DEFAULTS).get(NO_ID),
        get(entries, "looms", Loom.class),
        new Parts(
            get(entries, "parts/wires", WirePart.class),
            get(entries, "parts/housings", Housing.class),
            get(entries, "parts/terminals", Terminal.class),
            get(entries, "parts/seals", Seal.class),
            get(entries, "parts/splices", SplicePart.class),
            get(entries, "parts/fuses", FusePart.class),
            get(entries, "parts/coverings", Covering.class),
            get(entries, "parts/supports", Support.class),
            get(entries, "parts/deviceTypes", DeviceType.class)),
        get(entries, "devices", Device.class),
        get(entries, "fitted", String.class),
        get(entries, "connectors", Connector.class),
        get(entries, "splices", Splice.class),
        get(entries, "wires", Wire.class),
        get(entries, "groups", Group.class),
        new Layout(
            get(entries, "nodes", Layout.Node.class),
            get(entries, "segments", Layout.Segment.class)),
        get(entries, "zones", Zone.class),
        get(entries, "states", State.class),
        get(entries, "limits", RuleLimits.class),
        get(entries, "waivers", Waiver.class),
        get(entries, "expectations", Expectation.class));
  }

  /** An entry as a subject: {@code wires/W1}, {@code defaults}. */
  public static Subject subject(String section, String id) {
    return id.isEmpty() ? new Subject(section) : Subject.of(section, id);
  }

  private static void put(
      Map<String, Map<String, Object>> all, String section, Map<String, ?> entries) {
    all.put(section, Collections.unmodifiableMap(entries));
  }

  private static <T> Map<String, T> get(
      Map<String, Map<String, Object>> entries, String section, Class<T> type) {
    Map<String, T> typed = new LinkedHashMap<>();
    entries.getOrDefault(section, Map.of()).forEach((id, entry) -> typed.put(id, type.cast(entry)));
    return typed;
  }
}
