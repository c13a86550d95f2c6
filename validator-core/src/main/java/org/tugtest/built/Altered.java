package org.tugtest.built;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.read.ReadHarness;

/** A plan with what was built otherwise. */
final class Altered {
  private Altered() {}

  /**
   * The plan with these entries. A connector, a splice or a segment that was left out or added
   * stays as planned.
   */
  static Facts of(Facts plan, Collection<TakenEntry> entries) {
    Map<String, Wire> wires = new LinkedHashMap<>(plan.harness().wires());
    AlteredThings things = new AlteredThings(plan.harness());
    for (TakenEntry entry : entries) {
      for (Alteration alteration : entry.alterations()) {
        if (alteration.thing().startsWith("wires/")) {
          String id = alteration.thing().substring("wires/".length());
          apply(wires, id, alteration, entry.record().loom());
        } else if (!alteration.fields().isEmpty()) {
          things.apply(alteration);
        }
      }
    }
    ReadHarness read = ReadHarness.unwritten(things.harness().withWires(wires));
    return Facts.of(read, plan.today(), KnownRules.NONE);
  }

  private static void apply(
      Map<String, Wire> wires, String id, Alteration alteration, @Nullable String loom) {
    Object value = alteration.value();
    if (alteration.fields().isEmpty()) {
      if (value instanceof Map<?, ?> fields) {
        wires.put(id, added(id, loom, fields));
      } else {
        wires.remove(id);
      }
      return;
    }
    Wire is = wires.get(id);
    if (is != null) {
      wires.put(id, changed(is, alteration.fields().get(0), value));
    }
  }

  private static Wire changed(Wire is, String field, @Nullable Object value) {
    String text = value == null ? null : value.toString();
    Double number = value instanceof Number figure ? Double.valueOf(figure.doubleValue()) : null;
    boolean from = field.equals("from");
    boolean to = field.equals("to");
    boolean part = field.equals("part");
    boolean area = field.equals("areaMm2");
    boolean awg = field.equals("awg");
    boolean length = field.equals("cutMm") || field.equals("builtMm");
    return new Wire(
        is.id(),
        is.loom(),
        from && text != null ? Ref.parse(text) : is.from(),
        to && text != null ? Ref.parse(text) : is.to(),
        part ? text : is.part(),
        area ? number : is.areaMm2(),
        awg ? text : is.awg(),
        field.equals("colour") ? text : is.colour(),
        is.colourDrawn(),
        is.circuit(),
        is.via(),
        is.laidInPlace(),
        is.cutMm(),
        length ? number : is.builtMm(),
        is.fromTerminal(),
        is.toTerminal(),
        is.label(),
        is.evidence(),
        is.decision(),
        is.reason());
  }

  private static Wire added(String id, @Nullable String loom, Map<?, ?> fields) {
    return new Wire(
        id,
        loom,
        fields.get("from") instanceof String from ? Ref.parse(from) : null,
        fields.get("to") instanceof String to ? Ref.parse(to) : null,
        fields.get("part") instanceof String part ? part : null,
        fields.get("areaMm2") instanceof Number area ? Double.valueOf(area.doubleValue()) : null,
        fields.get("awg") instanceof String awg ? awg : null,
        fields.get("colour") instanceof String colour ? colour : null,
        null,
        null,
        List.of(),
        Boolean.TRUE.equals(fields.get("laidInPlace")),
        fields.get("cutMm") instanceof Number cut ? Double.valueOf(cut.doubleValue()) : null,
        fields.get("builtMm") instanceof Number built ? Double.valueOf(built.doubleValue()) : null,
        fields.get("fromTerminal") instanceof String terminal ? terminal : null,
        fields.get("toTerminal") instanceof String terminal ? terminal : null,
        null,
        null,
        null,
        null);
  }
}
