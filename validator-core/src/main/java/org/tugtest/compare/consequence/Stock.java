package org.tugtest.compare.consequence;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Harness;
import org.tugtest.model.Housing;
import org.tugtest.model.Seal;
import org.tugtest.model.Splice;
import org.tugtest.model.SplicePart;
import org.tugtest.model.Terminal;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;

/**
 * What a harness is made of.
 *
 * @param contacts cavities and device pins that hold at least one wire
 * @param wireMm length of all wires whose length is known, millimetres
 * @param noLength wires whose length is not known
 * @param grams mass of wires, housings, terminals, seals and splices, as far as parts give it
 * @param noMass wires, connectors, contacts and splices of which it is not known
 */
public record Stock(
    int wires,
    int connectors,
    int contacts,
    int splices,
    int devices,
    double wireMm,
    int noLength,
    double grams,
    int noMass) {
  private static final double PER_METRE = 1000;

  /** Adds up a harness. */
  public static Stock of(Facts facts) {
    Sum sum = new Sum(facts);
    sum.wires();
    sum.connectors();
    sum.contacts();
    sum.splices();
    Harness harness = facts.harness();
    return new Stock(
        harness.wires().size(),
        facts.wiring().connectors().size(),
        sum.contacts,
        facts.wiring().splices().size(),
        harness.devices().size(),
        sum.mm,
        sum.noLength,
        sum.grams,
        sum.noMass);
  }

  private static final class Sum {
    private final Facts facts;
    private int contacts;
    private double mm;
    private int noLength;
    private double grams;
    private int noMass;

    Sum(Facts facts) {
      this.facts = facts;
    }

    private void add(@Nullable Double known) {
      if (known == null) {
        noMass++;
      } else {
        grams += known;
      }
    }

    void wires() {
      for (Wire wire : facts.harness().wires().values()) {
        Double length = facts.lengths().of(wire).map(found -> found.mm()).orElse(null);
        WirePart part =
            wire.part() == null ? null : facts.harness().parts().wires().get(wire.part());
        Double perMetre = part == null ? null : part.gramsPerM();
        if (length == null) {
          noLength++;
        } else {
          mm += length;
        }
        add(length == null || perMetre == null ? null : perMetre * length / PER_METRE);
      }
    }

    void connectors() {
      for (String id : facts.wiring().connectors()) {
        Connector connector = facts.harness().connectors().get(id);
        Housing housing =
            connector == null || connector.housing() == null
                ? null
                : facts.harness().parts().housings().get(connector.housing());
        add(housing == null ? null : housing.grams());
      }
    }

    void contacts() {
      for (Map.Entry<Point, List<WireEnd>> entry : facts.wiring().ends().entrySet()) {
        Point point = entry.getKey();
        if (point.kind() == Point.Kind.SPLICE) {
          continue;
        }
        contacts++;
        if (point.kind() == Point.Kind.CAVITY) {
          Terminal terminal = facts.fitting().terminal(point).part();
          add(terminal == null ? null : terminal.grams());
          Seal seal = facts.fitting().seal(point).part();
          if (seal != null) {
            add(seal.grams());
          }
        }
      }
    }

    void splices() {
      for (String id : facts.wiring().splices()) {
        Splice splice = facts.harness().splices().get(id);
        SplicePart part =
            splice == null || splice.part() == null
                ? null
                : facts.harness().parts().splices().get(splice.part());
        add(part == null ? null : part.grams());
      }
    }
  }
}
