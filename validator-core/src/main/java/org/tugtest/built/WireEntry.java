package org.tugtest.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.built.Entries.Misfit;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.Facts;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.table.AwgTable;
import org.tugtest.table.Cited;
import org.tugtest.text.Quoted;

/** Entries that speak of a wire. */
final class WireEntry {
  private final EntryReader reader;
  private final Facts plan;
  private final Wire wire;
  private final String thing;

  WireEntry(EntryReader reader) {
    this.reader = reader;
    this.plan = reader.plan();
    this.wire = Objects.requireNonNull(plan.harness().wires().get(reader.owner()));
    this.thing = "wires/" + wire.id();
  }

  TakenEntry read() throws Misfit {
    return switch (reader.kind()) {
      case RE_PINNED -> rePinned();
      case RE_COLOURED -> reColoured();
      case RE_GAUGED -> reGauged();
      case PART -> part();
      case LENGTH -> length();
      case LEFT_OUT ->
          reader.taken(
              Deviation.Kind.CONNECTION,
              "wire " + wire.id() + " was left out",
              List.of(new Alteration(thing, List.of(), null)));
      case MOVED -> moved();
      case ADDED -> throw new IllegalStateException("read elsewhere");
    };
  }

  private TakenEntry rePinned() throws Misfit {
    Ref built = Ref.parse(reader.builtText());
    boolean from = isFrom(built);
    Ref planned = from ? wire.from() : wire.to();
    String was = planned == null ? "" : planned.text();
    reader.agree(was);
    reader.differ(was, built.text());
    Names names = new Names(plan);
    if (names.point(built).isEmpty()) {
      throw new Misfit(
          "says that wire " + wire.id() + " was built into " + built + ", which there is not",
          names.nearest(built));
    }
    return reader.taken(
        Deviation.Kind.CONNECTION,
        "wire "
            + wire.id()
            + " was built into "
            + built
            + (was.isEmpty() ? "" : " instead of " + was),
        List.of(new Alteration(thing, List.of(from ? "from" : "to"), built.text())));
  }

  /** Which end an entry means: the one it names, the one that was planned so, or the nearer one. */
  private boolean isFrom(Ref built) throws Misfit {
    if (reader.member().equals("from") || reader.member().equals("to")) {
      return reader.member().equals("from");
    }
    Object planned = reader.entry().planned();
    String said = EntryReader.words(planned);
    if (planned != null && wire.from() != null && wire.from().text().equals(said)) {
      return true;
    }
    if (planned != null && wire.to() != null && wire.to().text().equals(said)) {
      return false;
    }
    boolean fromNear = wire.from() != null && wire.from().owner().equals(built.owner());
    boolean toNear = wire.to() != null && wire.to().owner().equals(built.owner());
    if (planned == null && fromNear != toNear) {
      return fromNear;
    }
    String ends = ends(wire.from()) + " to " + ends(wire.to());
    throw new Misfit(
        planned == null
            ? "does not say which end of wire " + wire.id() + " (" + ends + ") was re-pinned"
            : "says that wire "
                + wire.id()
                + " was planned to end on "
                + Quoted.text(said)
                + "; revision "
                + reader.record().revision()
                + " of the plan has it from "
                + ends,
        planned == null
            ? "write the planned end under \"planned\""
            : "the record was made against another plan: correct the entry, or the record's"
                + " revision");
  }

  private static String ends(@Nullable Ref ref) {
    return ref == null ? "nowhere" : ref.text();
  }

  private TakenEntry reColoured() throws Misfit {
    String was = Objects.requireNonNullElse(wire.colour(), "");
    String built = reader.builtText();
    reader.agree(was);
    reader.differ(was, built);
    return reader.taken(
        Deviation.Kind.COLOUR,
        "wire " + wire.id() + " was built " + built + (was.isEmpty() ? "" : " instead of " + was),
        List.of(new Alteration(thing, List.of("colour"), built)));
  }

  private TakenEntry reGauged() throws Misfit {
    Object built = reader.entry().built();
    String as = reader.builtText();
    String was = size();
    reader.agree(was);
    reader.differ(was, as);
    List<Alteration> alterations = new ArrayList<>();
    Double area = null;
    WirePart part = plan.harness().parts().wires().get(as);
    Optional<Cited> gauge = built instanceof Number ? Optional.empty() : AwgTable.areaMm2(as);
    if (part != null) {
      alterations.add(new Alteration(thing, List.of("part"), as));
      area = area(part);
    } else if (built instanceof Number number) {
      alterations.add(new Alteration(thing, List.of("areaMm2"), number));
      area = number.doubleValue();
    } else if (gauge.isPresent()) {
      alterations.add(new Alteration(thing, List.of("awg"), as));
      area = gauge.get().value();
    } else {
      alterations.add(new Alteration(thing, List.of("part"), as));
    }
    String field = alterations.get(0).fields().get(0);
    for (String other : List.of("part", "areaMm2", "awg")) {
      if (!other.equals(field) && given(other)) {
        alterations.add(new Alteration(thing, List.of(other), null));
      }
    }
    Double planned = plan.fitting().sizes().areaMm2(wire).map(Cited::value).orElse(null);
    return reader.taken(
        Deviation.Kind.SIZE,
        "wire " + wire.id() + " was built of " + as + (was.isEmpty() ? "" : " instead of " + was),
        planned,
        area,
        alterations);
  }

  private boolean given(String field) {
    return switch (field) {
      case "part" -> wire.part() != null;
      case "areaMm2" -> wire.areaMm2() != null;
      default -> wire.awg() != null;
    };
  }

  /** What the plan says of the size, as it is written. */
  private String size() {
    if (wire.part() != null) {
      return wire.part();
    }
    return wire.areaMm2() != null
        ? Quoted.number(wire.areaMm2())
        : Objects.requireNonNullElse(wire.awg(), "");
  }

  private static @Nullable Double area(WirePart part) {
    if (part.areaMm2() != null) {
      return part.areaMm2();
    }
    return part.awg() == null ? null : AwgTable.areaMm2(part.awg()).map(Cited::value).orElse(null);
  }

  /** A wire of another part of the same size is another part; of another size, another size. */
  private TakenEntry part() throws Misfit {
    String field = reader.member();
    if (field.equals("fromTerminal") || field.equals("toTerminal")) {
      String was =
          Objects.requireNonNullElse(
              field.equals("fromTerminal") ? wire.fromTerminal() : wire.toTerminal(), "");
      String built = reader.builtText();
      reader.agree(was);
      reader.differ(was, built);
      return reader.taken(
          Deviation.Kind.PART,
          "wire "
              + wire.id()
              + " was built with terminal "
              + built
              + (was.isEmpty() ? "" : " instead of " + was),
          List.of(new Alteration(thing, List.of(field), built)));
    }
    return reGauged();
  }

  private TakenEntry length() throws Misfit {
    Object value =
        reader.entry().builtMm() != null ? reader.entry().builtMm() : reader.entry().built();
    if (!(value instanceof Number built)) {
      throw new Misfit("does not say how long it was built", "write the length under \"builtMm\"");
    }
    Double cut = wire.cutMm();
    if (cut != null) {
      reader.agree(Quoted.number(cut));
    }
    Double planned = cut;
    if (planned == null && reader.entry().planned() instanceof Number said) {
      planned = said.doubleValue();
    }
    if (planned == null) {
      planned = plan.routes().of(wire.id()).map(route -> route.plannedMm(wire)).orElse(null);
    }
    String was = planned == null ? "" : " instead of " + Quoted.number(planned) + " mm";
    return reader.taken(
        Deviation.Kind.LENGTH,
        "wire " + wire.id() + " was built " + Quoted.number(built.doubleValue()) + " mm long" + was,
        planned,
        built.doubleValue(),
        List.of(new Alteration(thing, List.of(wire.laidInPlace() ? "builtMm" : "cutMm"), built)));
  }

  /** A wire that was moved runs another way. */
  private TakenEntry moved() throws Misfit {
    String built = reader.builtText();
    String was = String.join(" ", wire.via());
    reader.agree(was);
    reader.differ(was, built);
    List<String> nodes = List.of(built.trim().split("[ ,]+"));
    Map<String, ?> known = plan.harness().layout().nodes();
    for (String node : nodes) {
      if (!known.containsKey(node)) {
        throw new Misfit(
            "says that wire " + wire.id() + " runs over node " + node + ", which there is not",
            Names.nearest(node, known.keySet(), "nodes"));
      }
    }
    return reader.taken(
        Deviation.Kind.POSITION,
        "wire "
            + wire.id()
            + " was laid over "
            + String.join(", ", nodes)
            + (was.isEmpty() ? "" : " instead of " + was),
        List.of(new Alteration(thing, List.of("via"), nodes)));
  }
}
