package org.tugtest.built;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.match.Match;
import org.tugtest.compare.match.Matches;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Ref;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.table.Cited;
import org.tugtest.text.Quoted;

/** What a harness file that says how everything was built says otherwise than the plan. */
final class BuiltHarness {
  private final Facts plan;
  private final Facts built;
  private final Matches matches;
  private final Map<String, TakenEntry> told = new HashMap<>();
  private final List<Deviation> deviations = new ArrayList<>();

  BuiltHarness(Facts plan, Facts built) {
    this.plan = plan;
    this.built = built;
    this.matches = Matches.of(plan, built);
  }

  /** All deviations; {@code entries} tell which of them are accepted. */
  List<Deviation> deviations(List<TakenEntry> entries) {
    entries.forEach(
        entry -> told.put(key(entry.deviation().kind(), entry.deviation().subject()), entry));
    matches
        .removed("wires")
        .forEach(
            id ->
                add(
                    Deviation.Kind.CONNECTION,
                    Subject.wire(id),
                    "wire " + id + " was left out",
                    null,
                    null));
    matches.added("wires").forEach(this::added);
    matches.in("wires").forEach(this::wire);
    matches.in("connectors").forEach(this::connector);
    matches.in("splices").forEach(this::splice);
    for (Map.Entry<String, String> fitted : plan.harness().fitted().entrySet()) {
      String is = built.harness().fitted().get(fitted.getKey());
      if (!fitted.getValue().equals(is)) {
        add(
            Deviation.Kind.PART,
            Subject.of("devices", fitted.getKey()),
            fitted.getKey()
                + " was built with "
                + (is == null ? "no fuse" : "fuse " + is)
                + " instead of "
                + fitted.getValue(),
            null,
            null);
      }
    }
    return deviations;
  }

  private void added(String id) {
    Wire wire = Objects.requireNonNull(built.harness().wires().get(id));
    add(
        Deviation.Kind.CONNECTION,
        Subject.wire(id),
        "wire " + id + " was added from " + end(wire.from()) + " to " + end(wire.to()),
        null,
        null);
  }

  private void wire(Match match) {
    Wire is = plan.harness().wires().get(match.before());
    Wire was = built.harness().wires().get(match.after());
    if (is == null || was == null) {
      return;
    }
    Subject subject = Subject.wire(is.id());
    ends(subject, is, was);
    Optional<Double> planned = plan.fitting().sizes().areaMm2(is).map(Cited::value);
    Optional<Double> area = built.fitting().sizes().areaMm2(was).map(Cited::value);
    String size = size(is);
    String builtSize = size(was);
    if (!size.equals(builtSize)
        && !(area.isPresent() && area.equals(planned) && is.part() == null)) {
      add(
          Deviation.Kind.SIZE,
          subject,
          "wire "
              + is.id()
              + " was built of "
              + (builtSize.isEmpty() ? "an unknown size" : builtSize)
              + (size.isEmpty() ? "" : " instead of " + size),
          planned.orElse(null),
          area.orElse(null));
    }
    if (was.colour() != null && !was.colour().equals(is.colour())) {
      add(
          Deviation.Kind.COLOUR,
          subject,
          "wire "
              + is.id()
              + " was built "
              + was.colour()
              + (is.colour() == null ? "" : " instead of " + is.colour()),
          null,
          null);
    }
    length(subject, is, was);
  }

  /** Which end is which changes nothing. */
  private void ends(Subject subject, Wire is, Wire was) {
    Ref from = renamed(is.from());
    Ref to = renamed(is.to());
    boolean turned = Objects.equals(from, was.to()) || Objects.equals(to, was.from());
    boolean straight = Objects.equals(from, was.from()) || Objects.equals(to, was.to());
    Ref builtFrom = turned && !straight ? was.to() : was.from();
    Ref builtTo = turned && !straight ? was.from() : was.to();
    for (int end = 0; end < 2; end++) {
      Ref planned = end == 0 ? from : to;
      Ref as = end == 0 ? builtFrom : builtTo;
      if (!Objects.equals(planned, as)) {
        add(
            Deviation.Kind.CONNECTION,
            subject,
            "wire " + is.id() + " was built into " + end(as) + " instead of " + end(planned),
            null,
            null);
      }
    }
  }

  private @Nullable Ref renamed(@Nullable Ref ref) {
    if (ref == null) {
      return null;
    }
    String owner = ref.owner();
    for (String section : List.of("connectors", "splices")) {
      owner = matches.ofBefore(section, ref.owner()).map(Match::after).orElse(owner);
    }
    return new Ref(owner, ref.pin(), ref.member());
  }

  private void length(Subject subject, Wire is, Wire was) {
    Double as = was.builtMm() != null ? was.builtMm() : was.cutMm();
    Double planned =
        is.cutMm() != null
            ? is.cutMm()
            : plan.routes().of(is.id()).map(route -> route.plannedMm(is)).orElse(null);
    if (as != null && planned != null && !as.equals(planned)) {
      add(
          Deviation.Kind.LENGTH,
          subject,
          "wire "
              + is.id()
              + " was built "
              + Quoted.number(as)
              + " mm long instead of "
              + Quoted.number(planned)
              + " mm",
          planned,
          as);
    }
  }

  private void connector(Match match) {
    Connector is = plan.harness().connectors().get(match.before());
    Connector was = built.harness().connectors().get(match.after());
    if (is == null || was == null) {
      return;
    }
    String id = is.id();
    part(Subject.connector(id), id, "housing ", is.housing(), was.housing(), "parts/housings");
    String at = plan.wiring().nodeOf(id).orElse(null);
    place(Subject.connector(id), id, at, built.wiring().nodeOf(was.id()).orElse(null));
  }

  private void splice(Match match) {
    Splice is = plan.harness().splices().get(match.before());
    Splice was = built.harness().splices().get(match.after());
    if (is == null || was == null) {
      return;
    }
    part(Subject.splice(is.id()), is.id(), "part ", is.part(), was.part(), "parts/splices");
    place(
        Subject.splice(is.id()),
        is.id(),
        is.at() == null ? is.on() : is.at(),
        was.at() == null ? was.on() : was.at());
  }

  private void part(
      Subject subject,
      String id,
      String noun,
      @Nullable String is,
      @Nullable String was,
      String section) {
    String same = is == null ? null : matches.ofBefore(section, is).map(Match::after).orElse(is);
    if (was != null && !was.equals(same)) {
      add(
          Deviation.Kind.PART,
          subject,
          id + " was built with " + noun + was + (is == null ? "" : " instead of " + is),
          null,
          null);
    }
  }

  private void place(Subject subject, String id, @Nullable String is, @Nullable String was) {
    String same = is == null ? null : matches.ofBefore("nodes", is).map(Match::after).orElse(is);
    if (was != null && !was.equals(same)) {
      add(
          Deviation.Kind.POSITION,
          subject,
          id + " was built at " + was + (is == null ? "" : " instead of " + is),
          null,
          null);
    }
  }

  private static String size(Wire wire) {
    if (wire.part() != null) {
      return wire.part();
    }
    return wire.areaMm2() != null
        ? Quoted.number(wire.areaMm2())
        : Objects.requireNonNullElse(wire.awg(), "");
  }

  private static String end(@Nullable Ref ref) {
    return ref == null ? "nothing" : ref.text();
  }

  private static String key(Deviation.Kind kind, Subject subject) {
    return kind + " " + subject;
  }

  private void add(
      Deviation.Kind kind,
      Subject subject,
      String what,
      @Nullable Double planned,
      @Nullable Double as) {
    TakenEntry entry = told.get(key(kind, subject));
    Deviation its = entry == null ? null : entry.deviation();
    boolean there =
        !subject.section().equals("wires") || built.harness().wires().containsKey(subject.id());
    deviations.add(
        new Deviation(
            kind,
            subject,
            what,
            planned,
            as,
            its == null ? "" : its.reason(),
            its != null && its.accepted(),
            its == null ? null : its.until(),
            its == null ? null : its.safe(),
            its == null ? built.harness().root() : its.told(),
            its == null ? (there ? built : plan).places().of(subject.place()) : its.at()));
  }
}
