package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Layout;
import org.tugtest.model.Splice;
import org.tugtest.model.SplicePart;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Column;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Table;
import org.tugtest.route.Piece;
import org.tugtest.route.Stand;
import org.tugtest.table.Cited;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Quoted;

/** The splices of each loom along its segments, with what comes from which side. */
public final class SpliceList implements DocumentMaker {
  private static final String TITLE = "Splice list";
  private static final String NOWHERE = "nothing says where it stands";
  private static final List<Column> COLUMNS =
      List.of(
          Column.text("splice", "Splice"),
          Column.text("segment", "On segment"),
          Column.number("offset_mm", "From its start", "mm"),
          Column.text("start", "Start node"),
          Column.text("part", "Part"),
          Column.text("towards_start", "Wires towards the start"),
          Column.text("towards_end", "Wires towards the end"),
          Column.text("elsewhere", "Other wires"),
          Column.number("area_mm2", "Areas together", "mm²"),
          Column.text("takes", "Part takes"),
          Column.number("strip_mm", "Strip", "mm"),
          Column.text("covering", "Covering"),
          Column.text("label", "Label").inCsv());

  /** Where a splice is; the segment is empty at a node, the node empty on a segment. */
  private record At(String id, String segment, double offsetMm, String node, boolean known) {
    static final Comparator<At> ORDER =
        Comparator.comparing((At at) -> !at.known())
            .thenComparing(At::segment, NaturalOrder.NATURAL)
            .thenComparing(At::offsetMm)
            .thenComparing(At::node, NaturalOrder.NATURAL)
            .thenComparing(At::id, NaturalOrder.NATURAL);
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    List<Document> sheets = new ArrayList<>();
    for (Scope scope : Scope.parts(facts.harness())) {
      List<String> ids = LoomParts.splices(facts, scope);
      if (!ids.isEmpty()) {
        Maker maker = new Maker(facts);
        List<List<Cell>> rows =
            ids.stream().map(maker::at).sorted(At.ORDER).map(maker::row).toList();
        sheets.add(
            Sheet.titled(scope, "splices", TITLE)
                .purpose("Each splice in the order along its segment, and what comes from where.")
                .note(
                    "Slide the covering of a splice onto one of its wires before you crimp."
                        + " Measure from the start node of the segment.")
                .landscape()
                .add(Table.of(COLUMNS, rows, "There are no splices.").withTicks())
                .build());
      }
    }
    return sheets;
  }

  /** These splices in the order of their places. */
  static List<String> inOrder(Facts facts, List<String> ids) {
    Maker maker = new Maker(facts);
    return ids.stream().map(maker::at).sorted(At.ORDER).map(At::id).toList();
  }

  /** Where a splice stands, in words. */
  static String place(Facts facts, String id) {
    return facts.routes().standOf(Point.splice(id)).map(Stand::text).orElse(NOWHERE);
  }

  private static final class Maker {
    private final Facts facts;

    Maker(Facts facts) {
      this.facts = facts;
    }

    At at(String id) {
      Stand stand = facts.routes().standOf(Point.splice(id)).orElse(null);
      if (stand instanceof Stand.OnSegment on) {
        return new At(id, on.segment(), on.offsetMm(), "", true);
      }
      return stand instanceof Stand.AtNode at
          ? new At(id, "", 0, at.node(), true)
          : new At(id, "", 0, "", false);
    }

    List<Cell> row(At at) {
      Splice splice = facts.harness().splices().get(at.id());
      SplicePart part =
          splice == null || splice.part() == null
              ? null
              : facts.harness().parts().splices().get(splice.part());
      List<WireEnd> ends = LoomParts.endsIn(facts, at.id());
      Map<Side, List<String>> sides = new TreeMap<>();
      for (WireEnd end : ends) {
        sides.computeIfAbsent(side(at, end), side -> new ArrayList<>()).add(end.wire().id());
      }
      Layout.Segment segment = facts.harness().layout().segments().get(at.segment());
      return List.of(
          Cell.text(at.id()).over(splice != null && splice.endCap() ? "end cap" : ""),
          segment(at),
          at.segment().isEmpty() ? Cell.EMPTY : Cell.number(at.offsetMm(), 0),
          Cell.text(segment == null ? "" : segment.from()),
          part(splice, part),
          wires(sides.get(Side.START)),
          wires(sides.get(Side.END)),
          wires(sides.get(Side.OTHER)),
          area(ends),
          Cell.text(part == null ? "" : takes(part)),
          Cell.number(facts.harness().defaults().stripMm(), 1),
          Cell.text(splice == null ? "" : String.join(", ", splice.coverings())),
          Cell.text(splice == null || splice.label() == null ? at.id() : splice.label()));
    }

    private static Cell segment(At at) {
      if (!at.known()) {
        return Cell.unknown(NOWHERE);
      }
      return Cell.text(at.segment().isEmpty() ? "at node " + at.node() : at.segment());
    }

    private static Cell part(@Nullable Splice splice, @Nullable SplicePart part) {
      if (splice == null || splice.part() == null) {
        return Cell.unknown("no part given");
      }
      return Cell.text(splice.part()).over(part == null ? "no such part" : "");
    }

    private static Cell wires(@Nullable List<String> ids) {
      return Cell.text(ids == null ? "" : String.join(", ", ids));
    }

    private Cell area(List<WireEnd> ends) {
      return facts
          .fitting()
          .areaSum(ends)
          .map(Cited::value)
          .map(area -> Cell.number(area.doubleValue(), 2))
          .orElse(Cell.unknown("a wire gives no size"));
    }

    private static String takes(SplicePart part) {
      if (part.areaMinMm2() == null || part.areaMaxMm2() == null) {
        return "";
      }
      String range =
          Quoted.number(part.areaMinMm2()) + " to " + Quoted.number(part.areaMaxMm2()) + " mm²";
      return part.maxWires() == null ? range : range + ", " + part.maxWires() + " wires";
    }

    /** From which side a wire comes, by the piece of its route that touches the splice. */
    private Side side(At at, WireEnd end) {
      List<Piece> pieces =
          facts.routes().of(end.wire().id()).map(route -> route.pieces()).orElse(List.of());
      if (pieces.isEmpty() || at.segment().isEmpty()) {
        return Side.OTHER;
      }
      Piece piece = pieces.get(end.from() ? 0 : pieces.size() - 1);
      if (!piece.segment().equals(at.segment()) || piece.lengthMm() == 0) {
        return Side.OTHER;
      }
      double away = end.from() ? piece.toMm() : piece.fromMm();
      return away < at.offsetMm() ? Side.START : Side.END;
    }
  }

  private enum Side {
    START,
    END,
    OTHER
  }
}
