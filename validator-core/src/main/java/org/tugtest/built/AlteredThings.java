package org.tugtest.built;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.model.Splice;

/** The things of a plan beside its wires, with single fields as they were built. */
final class AlteredThings {
  private static final Connector.Cavity NOTHING = new Connector.Cavity(null, null, null, null);
  private final Harness plan;
  private final Map<String, Device> devices;
  private final Map<String, String> fitted;
  private final Map<String, Connector> connectors;
  private final Map<String, Splice> splices;
  private final Map<String, Layout.Segment> segments;

  AlteredThings(Harness plan) {
    this.plan = plan;
    this.devices = new LinkedHashMap<>(plan.devices());
    this.fitted = new LinkedHashMap<>(plan.fitted());
    this.connectors = new LinkedHashMap<>(plan.connectors());
    this.splices = new LinkedHashMap<>(plan.splices());
    this.segments = new LinkedHashMap<>(plan.layout().segments());
  }

  Harness harness() {
    return plan.withDevices(devices)
        .withFitted(fitted)
        .withConnectors(connectors)
        .withSplices(splices)
        .withLayout(new Layout(plan.layout().nodes(), segments));
  }

  /** Says of one field how it was built; of a thing that the plan has not it says nothing. */
  void apply(Alteration alteration) {
    List<String> fields = alteration.fields();
    Object value = alteration.value();
    String text = value == null ? null : value.toString();
    String field = fields.get(0);
    if (alteration.thing().equals("fitted")) {
      if (text == null) {
        fitted.remove(field);
      } else {
        fitted.put(field, text);
      }
      return;
    }
    String[] place = alteration.thing().split("/", 2);
    switch (place[0]) {
      case "connectors" ->
          connectors.computeIfPresent(place[1], (id, is) -> connector(is, fields, text));
      case "splices" -> splices.computeIfPresent(place[1], (id, is) -> splice(is, field, text));
      case "segments" -> segments.computeIfPresent(place[1], (id, is) -> segment(is, field, value));
      default -> devices.computeIfPresent(place[1], (id, is) -> device(is, field, text));
    }
  }

  private static Device device(Device is, String field, @Nullable String value) {
    String at = field.equals("at") ? value : is.at();
    return new Device(is.id(), is.type(), is.own(), at, is.boltedTo());
  }

  private static Connector connector(Connector is, List<String> fields, @Nullable String value) {
    Map<String, Connector.Cavity> cavities = new LinkedHashMap<>(is.cavities());
    if (fields.size() == 3) {
      Connector.Cavity cavity = cavities.getOrDefault(fields.get(1), NOTHING);
      cavities.put(
          fields.get(1),
          new Connector.Cavity(value, cavity.seal(), cavity.blank(), cavity.evidence()));
    }
    return new Connector(
        is.id(),
        is.loom(),
        fields.get(0).equals("housing") ? value : is.housing(),
        is.mates(),
        fields.get(0).equals("at") ? value : is.at(),
        is.parked(),
        is.terminals(),
        is.seals(),
        is.blanked(),
        cavities,
        is.label(),
        is.boot(),
        is.breakoutMm(),
        is.serviceMm(),
        is.pinMap());
  }

  private static Splice splice(Splice is, String field, @Nullable String value) {
    return new Splice(
        is.id(),
        is.loom(),
        field.equals("at") ? value : is.at(),
        field.equals("on") ? value : is.on(),
        field.equals("offsetMm") ? null : is.offsetMm(),
        field.equals("part") ? value : is.part(),
        is.endCap(),
        is.coverings(),
        is.label());
  }

  private static Layout.Segment segment(Layout.Segment is, String field, @Nullable Object value) {
    boolean length = field.equals("lengthMm") && value instanceof Number;
    boolean coverings = field.equals("coverings") && value instanceof List<?>;
    return new Layout.Segment(
        is.id(),
        is.loom(),
        is.from(),
        is.to(),
        length ? Double.valueOf(((Number) value).doubleValue()) : is.lengthMm(),
        is.zone(),
        coverings ? ((List<?>) value).stream().map(Object::toString).toList() : is.coverings(),
        is.supports(),
        field.equals("supportPart") && value != null ? value.toString() : is.supportPart(),
        is.bendRadiusMm(),
        is.flexes(),
        is.clearanceMm());
  }
}
