package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Covering;
import org.tugtest.model.Housing;
import org.tugtest.model.Layout;
import org.tugtest.model.Loom;
import org.tugtest.model.Splice;
import org.tugtest.network.Point;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Column;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Table;
import org.tugtest.route.Totals;
import org.tugtest.text.NaturalOrder;

/** What has to be bought for all looms that are not there yet, with waste and spares. */
public final class ShoppingList implements DocumentMaker {
  private static final String TITLE = "Shopping list";

  /** What a piece of wire is cut longer than planned, to be trimmed at the fit, in metres. */
  private static final double TRIM_M = 0.1;

  private static final double SPARE_SHARE = 0.1;
  private static final int LEAST_SPARES = 2;
  private static final double COVERING_WASTE = 0.05;
  private static final double THOUSAND = 1000;
  private static final double TINY = 1e-9;
  private static final Set<Totals.Kind> PIECE_KINDS =
      EnumSet.of(
          Totals.Kind.HOUSING,
          Totals.Kind.TERMINAL,
          Totals.Kind.SEAL,
          Totals.Kind.SPLICE,
          Totals.Kind.SUPPORT);
  private static final Set<Totals.Kind> ONE_EACH =
      EnumSet.of(Totals.Kind.HOUSING, Totals.Kind.SUPPORT);
  private static final List<Column> REELS =
      List.of(
          Column.text("what", "What"),
          Column.text("part", "Part"),
          Column.number("pieces", "Pieces", ""),
          Column.number("net_m", "In the looms", "m"),
          Column.number("buy_m", "To buy", "m"),
          Column.number("without_length", "Pieces without length, not counted", ""));
  private static final List<Column> PIECES =
      List.of(
          Column.text("what", "What"),
          Column.text("part", "Part"),
          Column.number("net", "In the looms", ""),
          Column.number("buy", "To buy", ""));

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    CutPlan plan = CutPlan.of(facts, Scope.WHOLE);
    List<List<Cell>> reels = new ArrayList<>();
    plan.sums().forEach((stock, sum) -> reels.add(wire(stock, sum)));
    reels.addAll(coverings(facts));
    List<List<Cell>> pieces = new ArrayList<>(counted(facts));
    pieces.addAll(blanks(facts));
    pieces.addAll(pieces(facts));
    if (reels.isEmpty() && pieces.isEmpty()) {
      return List.of();
    }
    int donors = plan.donors().size();
    List<String> found =
        facts.harness().looms().values().stream()
            .filter(loom -> loom.stage() == Loom.Stage.FOUND)
            .map(Loom::id)
            .toList();
    return List.of(
        Sheet.titled(Scope.WHOLE, "shopping", TITLE)
            .purpose("What the looms are made of, with waste and spares; no prices.")
            .note(
                "Wire: 100 mm more for each piece, to be trimmed at the fit (a published motorsport"
                    + " wiring course), rounded up to whole metres.")
            .note(
                "Coverings: heat shrink 15 % more, for it gets shorter (a sleeve seller's answers),"
                    + " others 5 % more (common practice), rounded up to half metres.")
            .note(
                "Terminals, seals, blanks and splices: a tenth more, at least two (common"
                    + " practice); housings, boots and supports as counted.")
            .note(
                donors == 0
                    ? ""
                    : donors
                        + (donors == 1 ? " wire is" : " wires are")
                        + " there already, from a donor, and not counted as wire.")
            .note(
                found.isEmpty()
                    ? ""
                    : "Not counted, as taken from a donor: " + String.join(", ", found) + ".")
            .add(
                Table.of(REELS, reels, "Nothing comes by the metre.")
                    .captioned("By the metre")
                    .withTicks())
            .add(
                Table.of(PIECES, pieces, "Nothing comes by the piece.")
                    .captioned("By the piece")
                    .inCsv("pieces")
                    .withTicks())
            .build());
  }

  private static List<Cell> wire(CutPlan.Stock stock, CutPlan.Sum sum) {
    int known = sum.count() - sum.withoutLength();
    double buy = Math.ceil(sum.metres() + TRIM_M * known - TINY);
    return List.of(
        Cell.text(stock.cable() ? "cable" : "wire"),
        stock.part().isEmpty() ? Cell.unknown("no part given") : Cell.text(stock.part()),
        Cell.count(sum.count()),
        known == 0 ? Cell.unknown("no length") : Cell.number(sum.metres(), 2),
        known == 0 ? Cell.unknown("no length") : Cell.number(buy, 0),
        sum.withoutLength() == 0 ? Cell.EMPTY : Cell.count(sum.withoutLength()));
  }

  /** The coverings of segments: those of other things have no length. */
  private static List<List<Cell>> coverings(Facts facts) {
    Map<String, List<Layout.Segment>> byPart = new TreeMap<>(NaturalOrder.NATURAL);
    LoomSegments segments = new LoomSegments(facts);
    for (Scope scope : Scope.parts(facts.harness())) {
      if (!found(facts, scope.loom())) {
        for (Layout.Segment segment : segments.of(scope)) {
          segment
              .coverings()
              .forEach(part -> byPart.computeIfAbsent(part, id -> new ArrayList<>()).add(segment));
        }
      }
    }
    List<List<Cell>> rows = new ArrayList<>();
    byPart.forEach((part, its) -> rows.add(covering(facts, part, its)));
    return rows;
  }

  private static List<Cell> covering(Facts facts, String id, List<Layout.Segment> its) {
    Covering part = facts.harness().parts().coverings().get(id);
    boolean shrinks = part != null && part.kind() == Covering.Kind.HEAT_SHRINK;
    double metres = 0;
    int without = 0;
    for (Layout.Segment segment : its) {
      Double mm = segment.lengthMm();
      metres += mm == null ? 0 : mm / THOUSAND;
      without += mm == null ? 1 : 0;
    }
    double more = 1 + (shrinks ? CoveringList.SHRINKS : COVERING_WASTE);
    boolean known = without < its.size();
    return List.of(
        Cell.text(part == null || part.kind() == null ? "covering" : part.kind().word()),
        Cell.text(id),
        Cell.count(its.size()),
        known ? Cell.number(metres, 2) : Cell.unknown("no length"),
        known ? Cell.number(Math.ceil(2 * metres * more - TINY) / 2, 1) : Cell.unknown("no length"),
        without == 0 ? Cell.EMPTY : Cell.count(without));
  }

  /** What is counted in the totals. */
  private static List<List<Cell>> counted(Facts facts) {
    Map<Totals.Kind, Map<String, Integer>> counts = new TreeMap<>();
    facts
        .totals()
        .byLoom()
        .forEach(
            (loom, sum) -> {
              if (!found(facts, loom)) {
                for (Totals.Line line : sum.lines()) {
                  counts
                      .computeIfAbsent(line.kind(), kind -> new TreeMap<>(NaturalOrder.NATURAL))
                      .merge(line.part(), line.count(), Integer::sum);
                }
              }
            });
    List<List<Cell>> rows = new ArrayList<>();
    counts.forEach(
        (kind, parts) -> {
          if (PIECE_KINDS.contains(kind)) {
            boolean spares = !ONE_EACH.contains(kind);
            parts.forEach((part, n) -> rows.add(piece(kind.word(), part, n, spares)));
          }
        });
    return rows;
  }

  private static List<List<Cell>> blanks(Facts facts) {
    Map<String, Integer> counts = new TreeMap<>(NaturalOrder.NATURAL);
    for (Connector connector : facts.harness().connectors().values()) {
      if (found(facts, orLoose(connector.loom()))) {
        continue;
      }
      Housing housing = facts.wiring().mating().housingOf(connector.id()).orElse(null);
      for (String cavity : facts.wiring().cavitiesOf(connector.id())) {
        if (Blanks.isBlanked(facts, Point.cavity(connector.id(), cavity))) {
          String family = housing == null ? null : housing.familyOf(cavity);
          counts.merge(family == null ? "" : "family " + family, 1, Integer::sum);
        }
      }
    }
    List<List<Cell>> rows = new ArrayList<>();
    counts.forEach((family, n) -> rows.add(piece("blanks", family, n, true)));
    return rows;
  }

  /** Boots, and what goes over splices and breakouts: pieces whose length nobody gives. */
  private static List<List<Cell>> pieces(Facts facts) {
    Map<String, Integer> counts = new TreeMap<>(NaturalOrder.NATURAL);
    for (Connector connector : facts.harness().connectors().values()) {
      if (connector.boot() != null && !found(facts, orLoose(connector.loom()))) {
        counts.merge(connector.boot(), 1, Integer::sum);
      }
    }
    for (Splice splice : facts.harness().splices().values()) {
      if (!found(facts, orLoose(splice.loom()))) {
        splice.coverings().forEach(part -> counts.merge(part, 1, Integer::sum));
      }
    }
    for (Layout.Node node : facts.harness().layout().nodes().values()) {
      node.coverings().forEach(part -> counts.merge(part, 1, Integer::sum));
    }
    List<List<Cell>> rows = new ArrayList<>();
    counts.forEach((part, n) -> rows.add(piece("coverings, by the piece", part, n, false)));
    return rows;
  }

  private static List<Cell> piece(String what, String part, int count, boolean spares) {
    int more = spares ? Math.max(LEAST_SPARES, (int) Math.ceil(count * SPARE_SHARE - TINY)) : 0;
    return List.of(
        Cell.text(what),
        part.isEmpty() ? Cell.unknown("no part given") : Cell.text(part),
        Cell.count(count),
        Cell.count(count + more));
  }

  private static String orLoose(@Nullable String loom) {
    return loom == null ? "" : loom;
  }

  private static boolean found(Facts facts, String loom) {
    Loom known = facts.harness().looms().get(loom);
    return known != null && known.stage() == Loom.Stage.FOUND;
  }
}
