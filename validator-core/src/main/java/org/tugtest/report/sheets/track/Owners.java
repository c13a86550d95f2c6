package org.tugtest.report.sheets.track;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.Housing;
import org.tugtest.model.Splice;
import org.tugtest.network.Mate;
import org.tugtest.network.Point;
import org.tugtest.report.html.OwnerNumbers;
import org.tugtest.report.html.OwnerNumbers.Owner;

/** Connectors, devices and splices, numbered, with what there is to say of each in a few words. */
final class Owners {
  private final Facts facts;
  private final OwnerNumbers numbers = new OwnerNumbers();

  Owners(Facts facts) {
    this.facts = facts;
    facts.network().points().forEach(point -> numbers.add(point.kind(), point.owner()));
    facts.wiring().connectors().forEach(id -> numbers.add(Point.Kind.CAVITY, id));
    facts.harness().devices().keySet().forEach(id -> numbers.add(Point.Kind.PIN, id));
  }

  List<Owner> all() {
    return numbers.all();
  }

  int number(Point.Kind kind, String id) {
    return numbers.of(kind, id);
  }

  /** {@code loom nose}, {@code at dash}, {@code mates ECU}. */
  List<String> said(Owner owner) {
    List<String> said = new ArrayList<>();
    switch (owner.kind()) {
      case CAVITY -> connector(owner.id(), said);
      case PIN -> {
        Device device = facts.harness().devices().get(owner.id());
        add(said, "", device == null ? null : device.type());
        add(said, "at ", device == null ? null : device.at());
      }
      case SPLICE -> {
        Splice splice = facts.harness().splices().get(owner.id());
        add(said, "loom ", splice == null ? null : splice.loom());
        add(said, "at ", splice == null ? null : splice.at());
        add(said, "on segment ", splice == null ? null : splice.on());
      }
    }
    return said;
  }

  private void connector(String id, List<String> said) {
    Connector connector = facts.harness().connectors().get(id);
    add(said, "loom ", connector == null ? null : connector.loom());
    add(said, "at ", facts.wiring().nodeOf(id).orElse(null));
    add(said, "mates ", facts.wiring().mating().mateOf(id).map(Mate::text).orElse(null));
    Housing housing = facts.wiring().mating().housingOf(id).orElse(null);
    add(said, "housing ", housing == null ? null : housing.id());
    add(said, "", housing == null || housing.side() == null ? null : housing.side().word());
    if (connector != null && !connector.labelText().equals(id)) {
      add(said, "label ", connector.labelText());
    }
    add(
        said,
        "parked, ",
        connector == null || connector.parked() == null ? null : connector.parked().word());
  }

  private static void add(List<String> said, String before, @Nullable String what) {
    if (what != null && !what.isBlank()) {
      said.add(before + what);
    }
  }
}
