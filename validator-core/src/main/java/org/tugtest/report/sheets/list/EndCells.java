package org.tugtest.report.sheets.list;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Housing;
import org.tugtest.model.Seal;
import org.tugtest.model.Splice;
import org.tugtest.model.Terminal;
import org.tugtest.network.Fitting;
import org.tugtest.network.Net;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.report.sheets.Cell;

/** What there is to print of the ends of wires. */
final class EndCells {
  private final Facts facts;

  EndCells(Facts facts) {
    this.facts = facts;
  }

  /** The contact or splice of an end; empty when it is open or names nothing known. */
  Optional<Point> point(WireEnd end) {
    return facts.wiring().pointOf(end.ref());
  }

  private static String nowhere(WireEnd end) {
    return end.ref() == null ? "open end" : "the end leads nowhere";
  }

  /** {@code XN1:5}, over the housing. */
  Cell place(WireEnd end) {
    if (end.ref() == null) {
      return Cell.unknown("open end");
    }
    String text = end.ref().text();
    return point(end).isEmpty()
        ? Cell.text(text).over("leads nowhere")
        : Cell.text(text).over(housing(end));
  }

  /** The connector, device or splice. */
  String owner(WireEnd end) {
    return end.ref() == null ? "" : end.ref().owner();
  }

  /** The cavity or pin; empty at a splice. */
  String contact(WireEnd end) {
    return point(end).map(Point::name).orElse("");
  }

  /** The housing, or what else the end sits on. */
  String housing(WireEnd end) {
    Point point = point(end).orElse(null);
    if (point == null) {
      return "";
    }
    if (point.kind() == Point.Kind.SPLICE) {
      Splice splice = facts.harness().splices().get(point.owner());
      String noun = splice != null && splice.endCap() ? "end cap" : "splice";
      return splice == null || splice.part() == null ? noun : noun + " " + splice.part();
    }
    if (point.kind() == Point.Kind.PIN) {
      return "device pin";
    }
    Connector connector = facts.harness().connectors().get(point.owner());
    return connector == null || connector.housing() == null ? "" : connector.housing();
  }

  /** The terminal at an end; empty in a splice. */
  Cell terminal(WireEnd end) {
    Point point = point(end).orElse(null);
    if (point != null && point.kind() == Point.Kind.SPLICE) {
      return Cell.EMPTY;
    }
    if (point == null && end.terminal() == null) {
      return Cell.unknown(nowhere(end));
    }
    if (point == null || point.kind() == Point.Kind.PIN) {
      return end.terminal() == null
          ? Cell.unknown("no terminal given")
          : Cell.text(end.terminal()).over(terminalPart(end) == null ? "no such part" : "");
    }
    if (facts.fitting().overfilled(point)) {
      return Cell.unknown("more wires than a terminal takes");
    }
    return chosen(facts.fitting().terminal(point), "no terminal given", Terminal::id);
  }

  /** The terminal part at an end; null when none is known. */
  @Nullable Terminal terminalPart(WireEnd end) {
    Point point = point(end).orElse(null);
    if (point != null && point.kind() == Point.Kind.SPLICE) {
      return null;
    }
    if (point == null || point.kind() == Point.Kind.PIN) {
      return end.terminal() == null
          ? null
          : facts.harness().parts().terminals().get(end.terminal());
    }
    return facts.fitting().overfilled(point) ? null : facts.fitting().terminal(point).part();
  }

  /** The seal on the wire; empty where the housing is not sealed. */
  Cell seal(WireEnd end) {
    Point point = point(end).orElse(null);
    if (point == null || point.kind() != Point.Kind.CAVITY) {
      return Cell.EMPTY;
    }
    Fitting.Choice<Seal> choice = facts.fitting().seal(point);
    boolean sealed =
        facts.wiring().mating().housingOf(point.owner()).map(Housing::sealed).orElse(false);
    return sealed || !choice.named().isEmpty()
        ? chosen(choice, "no seal given", Seal::id)
        : Cell.EMPTY;
  }

  private static <T> Cell chosen(Fitting.Choice<T> choice, String none, Function<T, String> id) {
    T part = choice.part();
    if (part == null) {
      List<String> named = choice.named();
      return named.isEmpty() ? Cell.unknown(none) : Cell.text(named.get(0)).over("no such part");
    }
    return Cell.text(id.apply(part)).over(choice.fits() ? "" : "does not fit");
  }

  /** What is stripped, in mm: the terminal's figure, else that of {@code defaults}. */
  Cell strip(WireEnd end) {
    Terminal part = terminalPart(end);
    if (part == null && point(end).isEmpty()) {
      return Cell.unknown(nowhere(end));
    }
    return part != null && part.stripMm() != null
        ? Cell.number(part.stripMm(), 1)
        : Cell.number(facts.harness().defaults().stripMm(), 1).over("default");
  }

  /** The net an end is on, by its first point. */
  String net(WireEnd end) {
    return point(end).flatMap(facts.nets()::of).map(Net::name).orElse("");
  }
}
