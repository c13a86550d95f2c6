package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Covering;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Housing;
import org.tugtest.model.Layout;
import org.tugtest.model.Near;
import org.tugtest.model.Need;
import org.tugtest.model.Splice;
import org.tugtest.model.SplicePart;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.network.Point;
import org.tugtest.route.Bundles;
import org.tugtest.route.Stand;
import org.tugtest.route.Surroundings;

/**
 * A thing in the air of its place.
 *
 * @param part what it is made of: a part id, or a bare area
 * @param standsC class of its material
 * @param airC air temperature where it is hottest
 * @param place what gives that temperature: {@code zone engine}
 * @param byDefault what gives no temperature of its own
 * @param lacking why it cannot be judged; empty when it can
 */
record Heated(
    Subject subject,
    String noun,
    String part,
    String loom,
    double standsC,
    double airC,
    String place,
    Basis basis,
    List<String> byDefault,
    String lacking) {
  private static final double BARE_C = 100;
  private static final String NO_CLASS = "its part gives no maxC";
  private static final String NO_AIR = "where it is, it is hot, and no ambientC says how hot";
  private static final String NO_PLACE = "nothing says where it is";

  /** In the plural. */
  String nouns() {
    return noun.equals("covering on segment") ? "coverings on segments" : noun + "s";
  }

  /** All things that could be judged. */
  static List<Heated> all(Facts facts) {
    List<Heated> all = new ArrayList<>();
    facts.harness().wires().values().forEach(wire -> all.add(of(facts, wire)));
    for (Layout.Segment segment : facts.harness().layout().segments().values()) {
      segment.coverings().forEach(id -> all.add(of(facts, segment, id)));
    }
    facts.harness().connectors().values().forEach(one -> all.add(of(facts, one)));
    facts.harness().splices().values().forEach(one -> all.add(of(facts, one)));
    facts.harness().devices().values().forEach(one -> all.add(of(facts, one)));
    return all;
  }

  private static Heated of(Facts facts, Wire wire) {
    WirePart part = wire.part() == null ? null : facts.harness().parts().wires().get(wire.part());
    boolean bare = wire.part() == null && (wire.areaMm2() != null || wire.awg() != null);
    Double stands = part != null ? part.maxC() : bare ? Double.valueOf(BARE_C) : null;
    Bundles.Company company = facts.bundles().along(wire.id()).orElse(null);
    String lacking = company == null ? "it has no route" : stands == null ? NO_CLASS : "";
    return made(
        Subject.wire(wire.id()),
        "wire",
        bare ? "bare area" : Objects.requireNonNullElse(wire.part(), ""),
        wire.loom(),
        stands,
        bare ? Basis.COMMON_PRACTICE : Basis.GIVEN,
        company == null ? null : company.around(),
        lacking);
  }

  private static Heated of(Facts facts, Layout.Segment segment, String covering) {
    Covering part = facts.harness().parts().coverings().get(covering);
    Double stands = part == null ? null : part.maxC();
    return made(
        Subject.of("segments", segment.id()),
        "covering on segment",
        covering,
        segment.loom(),
        stands,
        Basis.GIVEN,
        facts.bundles().surroundings().ofSegment(segment.id()),
        stands == null ? NO_CLASS : "");
  }

  private static Heated of(Facts facts, Connector connector) {
    Housing housing =
        connector.housing() == null
            ? null
            : facts.harness().parts().housings().get(connector.housing());
    Double stands = housing == null ? null : housing.maxC();
    Surroundings.Around around =
        facts
            .wiring()
            .nodeOf(connector.id())
            .map(node -> facts.bundles().surroundings().ofNode(node))
            .orElse(null);
    return made(
        Subject.connector(connector.id()),
        "connector",
        Objects.requireNonNullElse(connector.housing(), ""),
        connector.loom(),
        stands,
        Basis.GIVEN,
        around,
        stands == null ? NO_CLASS : "");
  }

  private static Heated of(Facts facts, Splice splice) {
    SplicePart part =
        splice.part() == null ? null : facts.harness().parts().splices().get(splice.part());
    Double stands = part == null ? null : part.maxC();
    Stand stand = facts.routes().standOf(Point.splice(splice.id())).orElse(null);
    Surroundings surroundings = facts.bundles().surroundings();
    Surroundings.Around around =
        stand == null
            ? null
            : stand instanceof Stand.OnSegment on
                ? surroundings.ofSegment(on.segment())
                : surroundings.ofNode(((Stand.AtNode) stand).node());
    return made(
        Subject.splice(splice.id()),
        "splice",
        Objects.requireNonNullElse(splice.part(), ""),
        splice.loom(),
        stands,
        Basis.GIVEN,
        around,
        stands == null ? NO_CLASS : "");
  }

  private static Heated of(Facts facts, Device device) {
    DeviceType type = facts.harness().typeOf(device);
    Double stands = type == null ? null : type.maxC();
    Surroundings.Around around =
        device.at() == null ? null : facts.bundles().surroundings().ofNode(device.at());
    return made(
        Subject.device(device.id()),
        "device",
        Objects.requireNonNullElse(device.type(), ""),
        null,
        stands,
        Basis.GIVEN,
        around,
        stands == null ? "it gives no maxC" : "");
  }

  private static Heated made(
      Subject subject,
      String noun,
      String part,
      @Nullable String loom,
      @Nullable Double stands,
      Basis basis,
      Surroundings.@Nullable Around around,
      String lacking) {
    boolean hot =
        around != null
            && !around.byDefault().isEmpty()
            && (around.near().contains(Near.HOT) || around.needs().contains(Need.HEAT));
    boolean stood = stands != null && around != null && around.ambientC().value() <= stands;
    return new Heated(
        subject,
        noun,
        part,
        Objects.requireNonNullElse(loom, ""),
        stands == null ? 0 : stands,
        around == null ? 0 : around.ambientC().value(),
        around == null ? "" : around.ambientC().source(),
        around == null ? basis : basis.weaker(around.ambientC().basis()),
        around == null ? List.of() : around.byDefault(),
        around == null && lacking.isEmpty()
            ? NO_PLACE
            : hot && stood && lacking.isEmpty() ? NO_AIR : lacking);
  }
}
