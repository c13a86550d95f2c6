package org.tugtest.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.built.Entries.Misfit;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.Layout;
import org.tugtest.model.Ref;
import org.tugtest.model.Splice;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.text.Quoted;

/** Entries that speak of a connector, a cavity, a splice, a device or a segment. */
final class OtherEntry {
  private static final String CONNECTORS = "connectors";
  private final EntryReader reader;
  private final Facts plan;
  private final String section;
  private final String id;

  OtherEntry(EntryReader reader) {
    this.reader = reader;
    this.plan = reader.plan();
    this.section = reader.subject().section();
    this.id = reader.owner();
  }

  TakenEntry read() throws Misfit {
    return switch (reader.kind()) {
      case RE_PINNED -> rePinned();
      case PART -> part();
      case MOVED -> moved();
      case LENGTH -> length();
      case LEFT_OUT -> leftOut();
      default ->
          throw new Misfit(
              "is "
                  + reader.kind().word()
                  + ", which only a wire can be, and speaks of "
                  + reader.subject(),
              "write wires/ID under \"at\"");
    };
  }

  /** All wire ends of a cavity are found in another one. */
  private TakenEntry rePinned() throws Misfit {
    Point cavity = Point.cavity(id, reader.member());
    List<WireEnd> ends = plan.wiring().endsAt(cavity);
    if (!section.equals(CONNECTORS) || reader.member().isEmpty() || ends.isEmpty()) {
      throw new Misfit(
          "is re-pinned and speaks of " + reader.subject() + ", in which no wire is planned",
          "write the wire under \"at\", such as wires/W1");
    }
    Ref built = Ref.parse(reader.builtText());
    reader.agree(cavity.text());
    reader.differ(cavity.text(), built.text());
    Names names = new Names(plan);
    if (names.point(built).isEmpty()) {
      throw new Misfit(
          "says that " + cavity + " was built as " + built + ", which there is not",
          names.nearest(built));
    }
    List<Alteration> alterations = new ArrayList<>();
    List<String> wires = new ArrayList<>();
    for (WireEnd end : ends) {
      alterations.add(
          new Alteration("wires/" + end.wire().id(), List.of(end.field()), built.text()));
      wires.add(end.wire().id());
    }
    String noun = wires.size() == 1 ? "wire " : "wires ";
    return reader.taken(
        Deviation.Kind.CONNECTION,
        noun
            + org.tugtest.text.Series.and(wires)
            + (wires.size() == 1 ? " was" : " were")
            + " built into "
            + built
            + " instead of "
            + cavity,
        alterations);
  }

  private TakenEntry part() throws Misfit {
    String built = reader.builtText();
    List<String> fields = new ArrayList<>();
    String was = "";
    String thing = section + "/" + id;
    String noun = "part ";
    switch (section) {
      case CONNECTORS -> {
        Connector connector = plan.harness().connectors().get(id);
        if (reader.member().isEmpty()) {
          fields.add("housing");
          noun = "housing ";
          was = connector == null ? "" : text(connector.housing());
        } else {
          fields.addAll(List.of("cavities", reader.member(), "terminal"));
          noun = "terminal ";
          Point cavity = Point.cavity(id, reader.member());
          was =
              plan.fitting().terminal(cavity).part() == null
                  ? ""
                  : Objects.requireNonNull(plan.fitting().terminal(cavity).part()).id();
        }
      }
      case "splices" -> {
        fields.add("part");
        Splice splice = plan.harness().splices().get(id);
        was = splice == null ? "" : text(splice.part());
      }
      case "segments" -> {
        Layout.Segment segment = Objects.requireNonNull(plan.harness().layout().segments().get(id));
        boolean support =
            EntryReader.words(reader.entry().planned()).equals(text(segment.supportPart()));
        fields.add(support ? "supportPart" : "coverings");
        noun = support ? "support " : built.contains(" ") ? "coverings " : "covering ";
        was = support ? text(segment.supportPart()) : String.join(" ", segment.coverings());
      }
      default -> {
        thing = "fitted";
        fields.add(id + "." + reader.member());
        noun = "fuse ";
        was = text(plan.harness().fitted().get(id + "." + reader.member()));
      }
    }
    reader.agree(was);
    reader.differ(was, built);
    Object value = fields.get(0).equals("coverings") ? List.of(built.split(" +")) : built;
    return reader.taken(
        Deviation.Kind.PART,
        (section.equals("segments") ? "segment " : "")
            + reader.subject().id()
            + " was built with "
            + noun
            + built
            + (was.isEmpty() ? "" : " instead of " + was),
        List.of(new Alteration(thing, fields, value)));
  }

  private TakenEntry moved() throws Misfit {
    String built = reader.builtText();
    String was = at();
    reader.agree(was);
    reader.differ(was, built);
    Map<String, ?> nodes = plan.harness().layout().nodes();
    Map<String, ?> segments = plan.harness().layout().segments();
    boolean onSegment = section.equals("splices") && segments.containsKey(built);
    if (!nodes.containsKey(built) && !onSegment) {
      throw new Misfit(
          "says that " + id + " was built at " + built + ", which is no node of the layout",
          Names.nearest(built, nodes.keySet(), "nodes"));
    }
    List<Alteration> alterations = new ArrayList<>();
    String thing = section + "/" + id;
    alterations.add(new Alteration(thing, List.of(onSegment ? "on" : "at"), built));
    Splice splice = section.equals("splices") ? plan.harness().splices().get(id) : null;
    if (splice != null) {
      alterations.add(new Alteration(thing, List.of(onSegment ? "at" : "on"), null));
      if (splice.offsetMm() != null) {
        alterations.add(new Alteration(thing, List.of("offsetMm"), null));
      }
    }
    return reader.taken(
        Deviation.Kind.POSITION,
        id + " was built at " + built + (was.isEmpty() ? "" : " instead of " + was),
        alterations);
  }

  private String at() {
    if (section.equals(CONNECTORS)) {
      return plan.wiring().nodeOf(id).orElse("");
    }
    if (section.equals("splices")) {
      Splice splice = plan.harness().splices().get(id);
      return splice == null ? "" : text(splice.at() == null ? splice.on() : splice.at());
    }
    Device device = plan.harness().devices().get(id);
    return device == null ? "" : text(device.at());
  }

  private TakenEntry length() throws Misfit {
    Layout.Segment segment = plan.harness().layout().segments().get(id);
    Object value =
        reader.entry().builtMm() != null ? reader.entry().builtMm() : reader.entry().built();
    if (segment == null || !(value instanceof Number built)) {
      throw new Misfit(
          "gives a length and speaks of " + reader.subject(),
          "write wires/ID or segments/ID under \"at\", and the length under \"builtMm\"");
    }
    Double planned = segment.lengthMm();
    reader.agree(planned == null ? "" : Quoted.number(planned));
    return reader.taken(
        Deviation.Kind.LENGTH,
        "segment "
            + id
            + " was built "
            + Quoted.number(built.doubleValue())
            + " mm long"
            + (planned == null ? "" : " instead of " + Quoted.number(planned) + " mm"),
        planned,
        built.doubleValue(),
        List.of(new Alteration("segments/" + id, List.of("lengthMm"), built)));
  }

  private TakenEntry leftOut() throws Misfit {
    if (section.equals("devices") || !reader.member().isEmpty()) {
      throw new Misfit(
          "says that " + reader.subject() + " was left out, which is no thing of a loom",
          "write the wire, connector, splice or segment under \"at\"");
    }
    String noun = section.substring(0, section.length() - 1);
    return reader.taken(
        Deviation.Kind.CONNECTION,
        noun + " " + id + " was left out",
        List.of(new Alteration(section + "/" + id, List.of(), null)));
  }

  private static String text(@Nullable String value) {
    return value == null ? "" : value;
  }
}
