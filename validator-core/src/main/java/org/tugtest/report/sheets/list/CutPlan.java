package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Group;
import org.tugtest.model.Wire;
import org.tugtest.report.sheets.Scope;
import org.tugtest.text.NaturalOrder;

/**
 * What is cut of a scope: single wires, and cables as one. Wires of a donor loom are there already.
 *
 * @param pieces by part, the longest first, of equal ones by id; those without length last
 * @param donors wires that are not cut
 */
record CutPlan(List<Piece> pieces, List<Wire> donors) {
  private static final double THOUSAND = 1000;
  private static final Comparator<Piece> ORDER =
      Comparator.comparing((Piece piece) -> piece.part().isEmpty())
          .thenComparing(Piece::part, NaturalOrder.NATURAL)
          .thenComparing(piece -> piece.mm() == null)
          .thenComparing(piece -> piece.mm() == null ? 0 : -piece.mm())
          .thenComparing(piece -> piece.wires().get(0).id(), NaturalOrder.NATURAL);

  /**
   * One cut.
   *
   * @param part part or size of the wire, id of the cable; empty when nothing says
   * @param mm null: not known
   * @param inPlace whether it is laid in place and cut there; a cable is when one of its wires is
   * @param cable null for a single wire
   * @param wires the wire, or those of the cable
   */
  record Piece(
      String part, @Nullable Double mm, boolean inPlace, @Nullable Group cable, List<Wire> wires) {}

  /** How much there is of one part; {@code withoutLength} pieces are not in the metres. */
  record Sum(int count, double metres, int withoutLength) {
    private static final Sum NOTHING = new Sum(0, 0, 0);

    private Sum with(Piece piece) {
      Double mm = piece.mm();
      return new Sum(
          count + 1,
          metres + (mm == null ? 0 : mm / THOUSAND),
          withoutLength + (mm == null ? 1 : 0));
    }
  }

  static CutPlan of(Facts facts, Scope scope) {
    CutLength lengths = new CutLength(facts);
    WireCells cells = new WireCells(facts);
    List<Piece> pieces = new ArrayList<>();
    List<Wire> donors = new ArrayList<>();
    Set<String> done = new HashSet<>();
    for (Group group : facts.harness().groups().values()) {
      if (group.kind() == Group.Kind.CABLE) {
        cable(facts, scope, lengths, group, done).ifPresent(pieces::add);
      }
    }
    for (Wire wire : LoomParts.wires(facts.harness(), scope)) {
      if (lengths.fromDonor(wire)) {
        donors.add(wire);
      } else if (!done.contains(wire.id())) {
        pieces.add(
            new Piece(cells.kind(wire), lengths.mm(wire), wire.laidInPlace(), null, List.of(wire)));
      }
    }
    pieces.sort(ORDER);
    return new CutPlan(List.copyOf(pieces), List.copyOf(donors));
  }

  private static Optional<Piece> cable(
      Facts facts, Scope scope, CutLength lengths, Group group, Set<String> done) {
    List<String> ids = new ArrayList<>(group.wires());
    if (group.screen() != null && !ids.contains(group.screen())) {
      ids.add(group.screen());
    }
    List<Wire> wires = new ArrayList<>();
    Double longest = null;
    for (String id : ids) {
      Wire wire = facts.harness().wires().get(id);
      if (wire != null && scope.holds(wire.loom()) && !lengths.fromDonor(wire) && done.add(id)) {
        wires.add(wire);
        Double mm = lengths.mm(wire);
        longest = mm != null && (longest == null || mm > longest) ? mm : longest;
      }
    }
    return wires.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Piece(
                group.id(),
                longest,
                wires.stream().anyMatch(Wire::laidInPlace),
                group,
                List.copyOf(wires)));
  }

  /**
   * What is cut.
   *
   * @param part part or size of the wire, id of the cable; empty when nothing says
   */
  record Stock(String part, boolean cable) {}

  /** How much there is of each part, in the order of the pieces. */
  Map<Stock, Sum> sums() {
    Map<Stock, Sum> sums = new LinkedHashMap<>();
    for (Piece piece : pieces) {
      Stock stock = new Stock(piece.part(), piece.cable() != null);
      sums.merge(stock, Sum.NOTHING.with(piece), (old, one) -> old.with(piece));
    }
    return sums;
  }
}
