package org.tugtest.report.sheets.ringout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.network.Point;
import org.tugtest.report.html.text.Figures;
import org.tugtest.report.sheets.Markup;

/** Writes the tables of rows; each row has a number of its own on the page. */
final class RowMarkup {
  /** Rows of one table over which the rest stands in the CSV file alone. */
  static final int MOST_ROWS = 3000;

  private final Markup html;
  private int next;

  RowMarkup(Markup html) {
    this.html = html;
  }

  /** Pairs of points, to be joined or apart. */
  void pairs(String heading, String how, List<Row> rows, boolean joined) {
    start(heading, how, rows);
    if (rows.isEmpty()) {
      return;
    }
    html.raw("<div class=\"scroll ring\"><table>\n<thead><tr><th class=\"tick\">Done</th>");
    html.raw("<th>No</th><th>From</th><th>To</th><th>" + (joined ? "Wires" : "Why") + "</th>");
    html.raw(joined ? "<th>Should read</th><th>At most</th>" : "");
    html.raw("<th>Reading <small>ohm</small></th><th class=\"no-print\"></th><th>Answer</th>");
    html.raw("<th>Note</th></tr></thead>\n<tbody>\n");
    for (Row row : rows.subList(0, Math.min(MOST_ROWS, rows.size()))) {
      begin(row);
      html.raw("<td class=\"point from\">").text(row.one().get(0).text());
      html.raw("</td><td class=\"point to\">").text(row.other().get(0).text());
      html.raw("</td><td>").text(row.says());
      if (!row.remark().isEmpty()) {
        html.raw("<small class=\"below\">").text(row.remark()).raw("</small>");
      }
      html.raw("</td>");
      if (joined) {
        figure("should read", row.ohms());
        figure("at most", row.limitOhms());
      }
      end(row, joined ? "joined" : "open");
    }
    finish(rows);
  }

  /** Readings with many points on each lead. */
  void ties(String heading, String how, List<Row> rows) {
    start(heading, how, rows);
    if (rows.isEmpty()) {
      return;
    }
    html.raw("<div class=\"scroll ring\"><table>\n<thead><tr><th class=\"tick\">Done</th>");
    html.raw("<th>No</th><th>What</th><th>Tied on one lead</th><th>Tied on the other</th>");
    html.raw("<th>Reading <small>ohm</small></th><th class=\"no-print\"></th><th>Answer</th>");
    html.raw("<th>Note</th></tr></thead>\n<tbody>\n");
    for (Row row : rows) {
      begin(row);
      html.raw("<td>").text(row.says()).raw("</td>");
      points(row.one());
      points(row.other());
      end(row, "open");
    }
    finish(rows);
  }

  private void start(String heading, String how, List<Row> rows) {
    html.raw("<section>\n").element("h2", heading).raw("\n<p class=\"soft\">").text(how);
    html.raw("</p>\n")
        .raw(rows.isEmpty() ? "<p class=\"none\">There is none.</p></section>\n" : "");
  }

  private void finish(List<Row> rows) {
    html.raw("</tbody></table></div>\n");
    if (rows.size() > MOST_ROWS) {
      html.raw("<p><b>" + (rows.size() - MOST_ROWS) + " more stand in the CSV file alone.</b></p>");
    }
    html.raw("</section>\n");
  }

  private void begin(Row row) {
    html.raw("<tr data-row=\"" + next++ + "\"><td class=\"tick\"><span></span></td>");
    html.raw("<td class=\"num\" data-head=\"no\">" + row.number() + "</td>");
  }

  private void end(Row row, String expected) {
    String which = row.kind().word() + " " + row.number();
    html.raw(
        "<td><input class=\"typed\" placeholder=\"ohm\" autocomplete=\"off\" aria-label=\"reading, "
            + which);
    html.raw("\"></td><td class=\"puts no-print\"><span class=\"js-flex\">");
    for (String word :
        expected.equals("joined") ? List.of("joined", "open") : List.of("open", "joined")) {
      html.raw("<button type=\"button\" data-put=\"" + word + "\">" + word + "</button>");
    }
    html.raw("</span></td><td class=\"answer\" role=\"status\"></td>");
    html.raw(
        "<td><input class=\"note\" placeholder=\"note\" autocomplete=\"off\" maxlength=\"200\""
            + " aria-label=\"note, ");
    html.raw(which + "\"></td></tr>\n");
  }

  private void figure(String head, @Nullable Double ohms) {
    html.raw("<td class=\"num\" data-head=\"" + head + "\">");
    html.text(ohms == null ? "not known" : Figures.three(ohms) + " Ω").raw("</td>");
  }

  private void points(List<Point> points) {
    html.raw("<td class=\"many\"><b>" + points.size() + "</b>");
    html.text(String.join(", ", points.stream().map(Point::text).toList())).raw("</td>");
  }

  /** The rows that stand on the page, in the order of their numbers. */
  static List<Row> shown(Rows rows) {
    ArrayList<Row> shown = new ArrayList<>();
    for (List<Row> part : List.of(rows.joined(), rows.apart())) {
      shown.addAll(part.subList(0, Math.min(MOST_ROWS, part.size())));
    }
    shown.addAll(rows.supply());
    shown.addAll(rows.ties());
    return shown;
  }
}
