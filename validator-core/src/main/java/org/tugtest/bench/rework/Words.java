package org.tugtest.bench.rework;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.WireLength;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** The sentences of the steps. */
final class Words {
  private final Bench bench;
  private final WireWords now;
  private final WireWords target;

  Words(Bench bench) {
    this.bench = bench;
    this.now = new WireWords(bench.now().harness());
    this.target = new WireWords(bench.target().harness());
  }

  /** {@code X1:3: release W1 (RD, 0.5 mm²), tag it X1:7}. */
  String release(Unit unit) {
    String verb = unit.seat().kind() == Point.Kind.CAVITY ? "release " : "take off ";
    return unit.seat().text() + ": " + verb + wires(unit.ends()) + "; " + tags(unit);
  }

  private String tags(Unit unit) {
    List<String> fates = new ArrayList<>();
    for (PieceEnd end : unit.ends()) {
      String fate = fate(end);
      fates.add(unit.ends().size() == 1 ? "tag it " + fate : "tag " + end.piece() + " " + fate);
    }
    boolean same = unit.ends().stream().map(this::fate).distinct().count() == 1;
    return same ? "tag it " + fate(unit.ends().get(0)) : String.join(", ", fates);
  }

  private String fate(PieceEnd end) {
    Job job = bench.jobs().of(end);
    if (job == null) {
      return end.piece().target() == null ? "OUT" : "LOOSE";
    }
    return job.to().text();
  }

  String releaseParked(Unit unit, Seat spare) {
    return spare.text() + ": release " + wires(unit.ends()) + ", which waits there; " + tags(unit);
  }

  String cutOut(Unit unit) {
    PieceEnd end = unit.ends().get(0);
    Job job = bench.jobs().of(end);
    boolean back = job != null && job.to().equals(unit.seat());
    return unit.seat().text()
        + ": cut "
        + wires(unit.ends())
        + " out"
        + (back ? ", to be joined again" : "; tag it " + fate(end));
  }

  String cutOff(Unit unit) {
    String terminal = unit.terminal() == null ? "the terminal" : "terminal " + unit.terminal();
    return unit.wires() + ": cut " + terminal + " off";
  }

  String remove(Piece piece) {
    return "draw " + wire(piece) + " out of the loom";
  }

  String lay(Piece piece) {
    Wire wire = piece.seen();
    Optional<Double> length = planned(wire);
    if (wire.laidInPlace()) {
      return piece.name()
          + ": lay "
          + target.stuff(wire)
          + " in along its way"
          + length.map(mm -> ", " + Quoted.number(mm) + " mm").orElse("")
          + ", and cut it there";
    }
    String cut =
        length.map(mm -> "cut " + Quoted.number(mm) + " mm of ").orElse("measure the way, cut ");
    return piece.name() + ": " + cut + target.stuff(wire) + ", lay it in";
  }

  /** What it is cut to, in mm: as it is planned, else as its way is cut, up to a whole step. */
  private Optional<Double> planned(Wire wire) {
    if (wire.cutMm() != null && !wire.laidInPlace()) {
      return Optional.of(wire.cutMm());
    }
    return bench
        .target()
        .routes()
        .of(wire.id())
        .map(route -> route.plannedMm(wire))
        .or(() -> bench.target().lengths().of(wire).map(WireLength::mm));
  }

  String park(Unit unit, @Nullable Seat spare, Seat to) {
    return spare == null
        ? "tie " + unit.wires() + " back until " + to.text() + " is free"
        : "put "
            + unit.wires()
            + " into "
            + spare.text()
            + ", which is free, until "
            + to.text()
            + " is";
  }

  String crimp(Unit wanted) {
    String terminal = wanted.terminal() == null ? "a terminal that fits" : wanted.terminal();
    String seat = wanted.seat().text();
    return wires(wanted.ends())
        + ": crimp "
        + terminal
        + (wanted.ends().size() > 1 ? " on, all in one barrel, for " : " on, for ")
        + seat;
  }

  String insert(Unit wanted) {
    return wanted.seat().kind() == Point.Kind.CAVITY
        ? wanted.seat().text()
            + ": insert "
            + wires(wanted.ends())
            + " until it clicks; tug lightly"
        : wanted.seat().text() + ": put " + wires(wanted.ends()) + " on";
  }

  String slideOn(Unit wanted, List<String> things) {
    return wanted.wires()
        + ": slide on "
        + Series.and(things)
        + " before "
        + (wanted.seat().kind() == Point.Kind.SPLICE ? "it is joined" : "the terminal");
  }

  String slideOver(Seat splice, PieceEnd end, List<String> coverings) {
    return end.piece()
        + ": slide on "
        + Series.and(coverings)
        + " for "
        + splice.owner()
        + " first";
  }

  String splice(Seat seat, List<PieceEnd> ends) {
    String part = splicePart(seat);
    String names = Series.and(ends.stream().map(end -> end.piece().name()).toList());
    boolean cap = splice(seat).map(Splice::endCap).orElse(false);
    return seat.owner()
        + (cap ? ": close " : ": join ")
        + names
        + (part == null ? "" : " with " + part);
  }

  String label(Piece piece) {
    return piece
        + ": label it \""
        + newLabel(piece)
        + "\" at both ends; a sleeve does not pass the terminals, take one that wraps round";
  }

  @Nullable String splicePart(Seat seat) {
    return splice(seat).map(Splice::part).orElse(null);
  }

  List<String> coverings(Seat seat) {
    return splice(seat).map(Splice::coverings).orElse(List.of());
  }

  private Optional<Splice> splice(Seat seat) {
    return Optional.ofNullable(bench.target().harness().splices().get(seat.owner()));
  }

  /** What cannot pass the terminal that is about to be crimped on, and is not on the wire yet. */
  List<String> slidOn(Unit wanted) {
    List<String> things = new ArrayList<>();
    Facts facts = bench.target();
    if (wanted.seat().kind() == Point.Kind.CAVITY) {
      Connector connector = facts.harness().connectors().get(wanted.seat().owner());
      if (connector != null && connector.boot() != null) {
        things.add("boot " + connector.boot());
      }
    }
    for (PieceEnd end : wanted.ends()) {
      String label = newLabel(end.piece());
      if (!label.isEmpty()) {
        things.add("label \"" + label + "\"");
      }
    }
    if (wanted.seal() != null) {
      things.add("seal " + wanted.seal());
    }
    return things.stream().distinct().toList();
  }

  /** The label that a wire needs and does not have; empty when it has it, or none is wanted. */
  String newLabel(Piece piece) {
    Wire is = piece.now();
    Wire becomes = piece.target();
    String label = becomes == null ? "" : becomes.labelText();
    return is != null && Objects.equals(is.labelText(), label) ? "" : label;
  }

  private String wires(List<PieceEnd> ends) {
    return ends.stream()
        .map(PieceEnd::piece)
        .distinct()
        .map(this::wire)
        .collect(Collectors.joining(" and "));
  }

  private String wire(Piece piece) {
    String looks = (piece.now() != null ? now : target).looks(piece.seen());
    return piece.name() + (looks.isEmpty() ? "" : " (" + looks + ")");
  }
}
