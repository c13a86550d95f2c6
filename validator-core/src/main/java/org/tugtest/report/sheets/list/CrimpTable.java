package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tugtest.facts.Facts;
import org.tugtest.model.Terminal;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
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
import org.tugtest.table.PullForceTable;
import org.tugtest.text.NaturalOrder;

/** What is stripped, sealed and crimped at each end, and one line for each set-up of the press. */
public final class CrimpTable implements DocumentMaker {
  private static final String TITLE = "Crimp, strip and seal table";
  private static final List<Column> SETUPS =
      List.of(
          Column.text("terminal", "Terminal"),
          Column.text("part", "Wire"),
          Column.text("size", "Size"),
          Column.number("ends", "Ends", ""),
          Column.number("strip_mm", "Strip", "mm"),
          Column.number("height_mm", "Crimp height", "mm"),
          Column.number("height_tolerance_mm", "Either way", "mm").inCsv(),
          Column.number("width_mm", "Crimp width", "mm").inCsv(),
          Column.number("insulation_height_mm", "Over insulation", "mm").inCsv(),
          Column.number("pull_n", "Holds at least", "N"),
          Column.text("pull_as", "Force as for"),
          Column.text("tool", "Tool, die").onPaper(),
          Column.text("height", "Measured height, mm").onPaper(),
          Column.text("width", "Measured width, mm").onPaper(),
          Column.text("pulled", "Pulled, N").onPaper());
  private static final List<Column> ENDS =
      List.of(
          Column.text("at", "At"),
          Column.text("wire", "Wire"),
          Column.text("colour", "Colour"),
          Column.text("size", "Size"),
          Column.text("seal", "Seal"),
          Column.number("strip_mm", "Strip", "mm"),
          Column.text("terminal", "Terminal"));

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    CutLength lengths = new CutLength(facts);
    List<Document> sheets = new ArrayList<>();
    for (Scope scope : Scope.parts(facts.harness())) {
      Map<Point, List<WireEnd>> ends = new TreeMap<>();
      int donors = 0;
      for (Wire wire : LoomParts.wires(facts.harness(), scope)) {
        if (lengths.fromDonor(wire)) {
          donors++;
          continue;
        }
        for (WireEnd end : List.of(new WireEnd(wire, true), new WireEnd(wire, false))) {
          facts
              .wiring()
              .pointOf(end.ref())
              .filter(point -> point.kind() != Point.Kind.SPLICE)
              .ifPresent(point -> ends.computeIfAbsent(point, p -> new ArrayList<>()).add(end));
        }
      }
      if (!ends.isEmpty()) {
        sheets.add(new Maker(facts).sheet(scope, ends, donors));
      }
    }
    return sheets;
  }

  private static final class Maker {
    private final Facts facts;
    private final WireCells cells;
    private final EndCells ends;
    private final CrimpHeights heights;

    Maker(Facts facts) {
      this.facts = facts;
      cells = new WireCells(facts);
      ends = new EndCells(facts);
      heights = new CrimpHeights(facts, ends);
    }

    Sheet sheet(Scope scope, Map<Point, List<WireEnd>> all, int donors) {
      Map<String, Setup> setups = new TreeMap<>(NaturalOrder.NATURAL);
      List<List<Cell>> rows = new ArrayList<>();
      all.forEach(
          (point, its) -> {
            its.forEach(end -> rows.add(row(end)));
            for (List<WireEnd> crimp : crimps(point, its)) {
              setups.computeIfAbsent(key(crimp), k -> new Setup(crimp)).ends += crimp.size();
            }
          });
      boolean lacking =
          setups.values().stream().anyMatch(setup -> heights.of(setup.crimp).isEmpty());
      return Sheet.titled(scope, "crimps", TITLE)
          .purpose("What is stripped, sealed and crimped at each end, and what a sample holds.")
          .note(
              "Holds at least: a terminal maker's public crimping specifications 114-2157 rev G"
                  + " figure 7 and 114-2161 rev F figure 4, commercial figures; pulled straight,"
                  + " 25.4 mm a minute, held for a minute, without the insulation grip. For a size"
                  + " in mm² it is the figure of the gauge below it. The terminal's own data go"
                  + " before it.")
          .note(
              "The files name no tool"
                  + (lacking ? ", and not every crimp height" : "")
                  + ": take "
                  + (lacking ? "them" : "it")
                  + " from the terminal maker's sheet and write down what you measure. Push the"
                  + " seal on before the crimp.")
          .note(
              setups.values().stream().anyMatch(setup -> setup.crimp.size() > 1)
                  ? "Several wires in one terminal are one crimp: its height goes by the sum of"
                      + " their areas; pull the thinnest."
                  : "")
          .note(
              donors == 0
                  ? ""
                  : donors
                      + (donors == 1 ? " wire of a donor has its" : " wires of a donor have their")
                      + " terminals already.")
          .landscape()
          .signed()
          .add(
              Table.of(SETUPS, setups.values().stream().map(this::setup).toList(), "")
                  .captioned("Set-ups: crimp and pull a sample of each first")
                  .inCsv("setups")
                  .withTicks())
          .add(Table.of(ENDS, rows, "").captioned("Ends, connector by connector").withTicks())
          .build();
    }

    /** One crimp, and how many ends are crimped like it. */
    private static final class Setup {
      final List<WireEnd> crimp;
      int ends;

      Setup(List<WireEnd> crimp) {
        this.crimp = crimp;
      }
    }

    /** What is crimped together: all ends in a cavity, on a pin each by itself. */
    private List<List<WireEnd>> crimps(Point point, List<WireEnd> its) {
      return point.kind() == Point.Kind.CAVITY && !facts.fitting().overfilled(point)
          ? List.of(its)
          : its.stream().map(List::of).toList();
    }

    private String key(List<WireEnd> crimp) {
      return ends.terminal(crimp.get(0)).value()
          + "\n"
          + joined(crimp, end -> cells.kind(end.wire()))
          + "\n"
          + ends.strip(crimp.get(0)).value();
    }

    private static String joined(List<WireEnd> crimp, Function<WireEnd, String> word) {
      return crimp.stream()
          .map(word)
          .sorted(NaturalOrder.NATURAL)
          .collect(Collectors.joining(" + "));
    }

    private List<Cell> setup(Setup setup) {
      List<WireEnd> crimp = setup.crimp;
      WireEnd end = crimp.get(0);
      boolean one = crimp.size() == 1;
      Optional<Terminal.Crimp> height = heights.of(crimp);
      Double own = height.map(Terminal.Crimp::pullN).orElse(null);
      Optional<PullForceTable.Force> force = least(crimp);
      return List.of(
          ends.terminal(end),
          one ? cells.part(end.wire()) : Cell.text(joined(crimp, e -> cells.kind(e.wire()))),
          one
              ? cells.size(end.wire())
              : Cell.text(joined(crimp, e -> cells.size(e.wire()).value())),
          Cell.count(setup.ends),
          ends.strip(end),
          heights.cell(crimp),
          CrimpHeights.figure(height.map(Terminal.Crimp::toleranceMm)),
          CrimpHeights.figure(height.map(Terminal.Crimp::widthMm)),
          CrimpHeights.figure(height.map(Terminal.Crimp::insulationHeightMm)),
          own != null
              ? Cell.number(own, 1)
              : force
                  .map(table -> Cell.number(table.newton().value(), 1))
                  .orElse(Cell.unknown("no such size in the table")),
          Cell.text(
              own != null
                  ? "the terminal's own"
                  : force.map(table -> "AWG " + table.awg()).orElse("")),
          Cell.EMPTY,
          Cell.EMPTY,
          Cell.EMPTY,
          Cell.EMPTY);
    }

    /** The force of the thinnest; empty when the table lacks one of them. */
    private Optional<PullForceTable.Force> least(List<WireEnd> crimp) {
      List<Optional<PullForceTable.Force>> all =
          crimp.stream().map(end -> force(end.wire())).toList();
      return all.stream().anyMatch(Optional::isEmpty)
          ? Optional.empty()
          : all.stream()
              .map(Optional::get)
              .min(Comparator.comparingDouble(one -> one.newton().value()));
    }

    /** By its gauge where it has one, else by its area. */
    private Optional<PullForceTable.Force> force(Wire wire) {
      WirePart part = wire.part() == null ? null : facts.harness().parts().wires().get(wire.part());
      boolean byArea = part == null ? wire.areaMm2() != null : part.areaMm2() != null;
      String awg = part == null ? wire.awg() : part.awg();
      return byArea || awg == null
          ? facts
              .fitting()
              .sizes()
              .areaMm2(wire)
              .flatMap(area -> PullForceTable.ofArea(area.value()))
          : PullForceTable.ofGauge(awg);
    }

    private List<Cell> row(WireEnd end) {
      return List.of(
          ends.place(end),
          cells.id(end.wire()).over(""),
          cells.colour(end.wire()),
          cells.size(end.wire()),
          ends.seal(end),
          ends.strip(end),
          ends.terminal(end));
    }
  }
}
