package org.tugtest.report.sheets.rework;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.bench.retest.Function;
import org.tugtest.bench.retest.Retest;
import org.tugtest.bench.rework.PieceEnd;
import org.tugtest.bench.rework.Rework;
import org.tugtest.bench.rework.Seat;
import org.tugtest.bench.rework.Step;
import org.tugtest.bench.ringout.Apart;
import org.tugtest.bench.ringout.Probe;
import org.tugtest.compare.Comparison;
import org.tugtest.report.BenchWork;
import org.tugtest.report.RetestText;
import org.tugtest.report.html.Assets;
import org.tugtest.report.html.RoomDrawings;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Column;
import org.tugtest.report.sheets.Drawing;
import org.tugtest.report.sheets.Markup;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Table;
import org.tugtest.report.sheets.Words;
import org.tugtest.text.Series;

/**
 * The rework sheet of a comparison: what to think of first, which wires no longer reach, the steps
 * sitting by sitting with boxes to tick, connector faces before and after, and what is measured
 * again.
 */
public final class ReworkSheet {
  /** Cavities of which the faces are drawn; beyond them they are left out and named. */
  private static final int MOST_CAVITIES = 1500;

  private static final String LEFT = "Stays as built, since it is accepted";
  private static final String SHORT = "does not reach";
  private static final List<Column> STEPS =
      List.of(
          Column.text("sitting", "Sitting").inCsv(),
          Column.number("step", "No", ""),
          Column.text("kind", "Kind").inCsv(),
          Column.text("at", "At"),
          Column.text("do", "Do"),
          Column.text("wires", "Wires").inCsv(),
          Column.text("from", "From").inCsv(),
          Column.text("to", "To").inCsv(),
          Column.text("part", "Part").inCsv(),
          Column.text("mark", "Mark"),
          Column.text("look_out", "Look out"),
          Column.text("done_by", "By").onPaper());

  private ReworkSheet() {}

  /**
   * The sheet; one without steps says so.
   *
   * @param name of its files, without ending
   */
  static Sheet of(Comparison comparison, BenchWork work, String name) {
    String title = work.putsBack() ? "Rework back to the plan" : "Rework";
    Sheet.Builder sheet = Sheet.titled(Scope.WHOLE, name, title).purpose(purpose(comparison, work));
    fill(sheet, work);
    return sheet.build();
  }

  /** Fills a sheet with the steps and all that belongs to them. */
  static void fill(Sheet.Builder sheet, BenchWork work) {
    Rework rework = work.rework();
    List<Sitting> sittings = Sitting.of(rework);
    List<String> marks = Marks.of(rework.steps());
    boolean again = marks.stream().anyMatch(mark -> mark.startsWith("used again"));
    sheet
        .note("Isolate the battery. Photograph both faces of each plug before you touch it.")
        .note(
            "Push a terminal towards its lock before you release it; do not pull until both locks"
                + " are free.")
        .note(counts(rework, sittings))
        .note(again ? Marks.USED_AGAIN : "")
        .signed()
        .landscape()
        .style(Assets.rooms() + Assets.read(ReworkSheet.class, "rework.css"));
    caution(sheet, "May be an interlock", rework.cautions());
    caution(sheet, "Does not reach any more", tooShort(rework));
    caution(sheet, "Cannot be done or judged from the files", rework.open());
    inFileAlone(sheet, "caution", rework.cautions());
    inFileAlone(sheet, "open", rework.open());
    inFileAlone(sheet, "left", work.left());
    besides(sheet, rework.besides());
    if (!work.left().isEmpty()) {
      sheet.add(new Words(LEFT, false, work.left()));
    }
    steps(sheet, sittings, marks, rework.besides().isEmpty());
    faces(sheet, work.way());
    again(sheet, work.retest());
  }

  private static String purpose(Comparison comparison, BenchWork work) {
    String from = work.putsBack() ? "the loom as built" : comparison.before().label();
    String to = work.putsBack() ? "the plan" : comparison.after().label();
    String but = work.left().isEmpty() ? "" : ", but for what is accepted as built";
    return "The steps from " + from + " to " + to + but + ", to be ticked off one by one.";
  }

  private static String counts(Rework rework, List<Sitting> sittings) {
    if (rework.steps().isEmpty()) {
      return "";
    }
    int connectors =
        (int) sittings.stream().flatMap(one -> one.connectors().stream()).distinct().count();
    return rework.steps().size()
        + (rework.steps().size() == 1 ? " step" : " steps")
        + (connectors == 0
            ? "."
            : " at "
                + connectors
                + (connectors == 1 ? " connector" : " connectors")
                + ", one sitting after the other: pull all that move, tag each with its new"
                + " cavity, then insert in the order of the face. No cavity ever holds two ends.");
  }

  private static void caution(Sheet.Builder sheet, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      Markup html = new Markup().raw("<div class=\"incomplete\" role=\"note\"><b>");
      html.text(heading).raw("</b>");
      lines.forEach(line -> html.element("p", line));
      sheet.add(new Drawing(html.raw("</div>").toString()));
    }
  }

  /** What the page says in a box above the steps, as rows of the file. */
  private static void inFileAlone(Sheet.Builder sheet, String kind, List<String> lines) {
    if (!lines.isEmpty()) {
      List<Column> exported = STEPS.stream().filter(Column::exported).map(Column::inCsv).toList();
      sheet.add(Table.of(exported, rows(exported, kind, lines), ""));
    }
  }

  /** What is done though no terminal moves; it has a box to tick like any step. */
  private static void besides(Sheet.Builder sheet, List<String> lines) {
    if (!lines.isEmpty()) {
      Table table = Table.of(STEPS, rows(STEPS, "beside", lines), "");
      sheet.add(table.captioned("Besides the terminals").withTicks());
    }
  }

  /** Rows that are no steps: they have no number and belong to no sitting. */
  private static List<List<Cell>> rows(List<Column> columns, String kind, List<String> lines) {
    List<List<Cell>> rows = new ArrayList<>();
    for (String line : lines) {
      Map<String, Cell> said = Map.of("kind", Cell.text(kind), "do", Cell.text(line));
      rows.add(columns.stream().map(one -> said.getOrDefault(one.key(), Cell.EMPTY)).toList());
    }
    return rows;
  }

  private static List<String> tooShort(Rework rework) {
    return rework.steps().stream()
        .flatMap(step -> step.remarks().stream())
        .filter(remark -> remark.contains(SHORT))
        .distinct()
        .toList();
  }

  private static void steps(
      Sheet.Builder sheet, List<Sitting> sittings, List<String> marks, boolean all) {
    if (sittings.isEmpty()) {
      String none =
          all
              ? "There is nothing to do on the bench."
              : "No terminal moves; what is to be done stands above.";
      sheet.add(Table.of(STEPS, List.of(), none));
    }
    for (int i = 0; i < sittings.size(); i++) {
      Sitting sitting = sittings.get(i);
      List<List<Cell>> rows = new ArrayList<>();
      for (int k = 0; k < sitting.steps().size(); k++) {
        int number = sitting.first() + k;
        rows.add(row(i + 1, number, sitting.steps().get(k), marks.get(number - 1)));
      }
      String where =
          sitting.connectors().isEmpty()
              ? "away from the connectors"
              : Series.and(sitting.connectors());
      sheet.add(
          Table.of(STEPS, rows, "").captioned("Sitting " + (i + 1) + ": " + where).withTicks());
    }
  }

  private static List<Cell> row(int sitting, int number, Step step, String mark) {
    String wires =
        Series.and(
            step.ends().stream()
                .map(PieceEnd::piece)
                .map(piece -> piece.name())
                .distinct()
                .toList());
    return List.of(
        Cell.count(sitting),
        Cell.count(number),
        Cell.text(step.kind().name().toLowerCase(Locale.ROOT).replace('_', '-')),
        Cell.text(step.at()),
        Cell.text(step.text()),
        Cell.text(wires),
        seat(step.from()),
        seat(step.to()),
        Cell.text(step.part()),
        Cell.text(mark),
        Cell.text(String.join("; ", step.remarks())),
        Cell.EMPTY);
  }

  private static Cell seat(@Nullable Seat seat) {
    return seat == null || seat.text().endsWith(":") ? Cell.EMPTY : Cell.text(seat.text());
  }

  private static void faces(Sheet.Builder sheet, Comparison way) {
    Map<String, String> faces = RoomDrawings.changedFaces(way, MOST_CAVITIES);
    if (faces.isEmpty()) {
      return;
    }
    Markup html = new Markup().raw("<section class=\"before-after\">\n");
    html.element("h2", "Connector faces before and after").raw("\n");
    html.raw("<p class=\"soft\">Wire side: you look at the back, where the wires go in. Mating");
    html.raw(" side: left and right change places.</p>\n");
    List<String> left = new ArrayList<>();
    faces.forEach(
        (id, drawn) -> {
          if (drawn.isEmpty()) {
            left.add(id);
          } else {
            html.raw("<article class=\"face\">").element("h3", id).raw("<div class=\"sides\">");
            html.raw(drawn).raw("</div></article>\n");
          }
        });
    if (!left.isEmpty()) {
      html.raw("<p>Left out, to keep the sheet small: ").text(Series.and(left)).raw(".</p>");
    }
    sheet.add(new Drawing(html.raw("</section>").toString()));
  }

  private static void again(Sheet.Builder sheet, Retest retest) {
    List<Column> columns =
        List.of(
            Column.text("loom", "Loom"),
            Column.text("from", "From"),
            Column.text("to", "To"),
            Column.text("should", "Should be"),
            Column.text("why", "Proves, or why"),
            Column.text("reading", "Reading").onPaper());
    List<List<Cell>> rows = new ArrayList<>();
    for (Retest.OfLoom loom : retest.looms()) {
      Cell title = Cell.text(loom.scope().title());
      for (Probe probe : loom.joined()) {
        String limit = RetestText.limit(probe);
        String should = "joined, " + (probe.limitOhms() == null ? limit : "at most " + limit);
        rows.add(
            List.of(
                title,
                Cell.text(probe.from().text()),
                Cell.text(probe.to().text()),
                Cell.text(should),
                Cell.text("proves " + RetestText.proves(probe)),
                Cell.EMPTY));
      }
      for (Apart apart : loom.apart()) {
        rows.add(
            List.of(
                title,
                Cell.text(apart.from().text()),
                Cell.text(apart.to().text()),
                Cell.text("apart"),
                Cell.text(apart.why()),
                Cell.EMPTY));
      }
    }
    if (!rows.isEmpty()) {
      sheet.add(Table.of(columns, rows, "").captioned("Measure again").withTicks().inCsv("retest"));
    }
    List<String> functions =
        retest.functions().stream().map((Function one) -> RetestText.of(one)).toList();
    if (!functions.isEmpty()) {
      sheet.add(new Words("Try again", false, functions));
    }
  }
}
