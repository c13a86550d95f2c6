package org.tugtest.report.sheets.ringout;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.bench.ringout.Blind;
import org.tugtest.bench.ringout.RingOut;
import org.tugtest.facts.Facts;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.html.Assets;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.Drawing;
import org.tugtest.report.sheets.Markup;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Words;

/**
 * The ring-out sheet of each loom on the bench, and of everything plugged together in the vehicle.
 * On a screen typed readings are answered on the spot; on paper there is room to write.
 */
public final class RingOutSheets implements DocumentMaker {
  private static final String TITLE = "Ring-out";

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    List<Document> sheets = new ArrayList<>();
    for (Scope scope : Scope.parts(facts.harness())) {
      var bench =
          scope.kind() == Scope.Kind.LOOM
              ? org.tugtest.bench.ringout.Scope.ofLoom(facts, scope.loom())
              : org.tugtest.bench.ringout.Scope.ofLoose(facts);
      if (!bench.wires().isEmpty()) {
        sheets.add(sheet(harness, scope, RingOut.of(facts, bench)));
      }
    }
    if (!facts.harness().looms().isEmpty() && !facts.harness().wires().isEmpty()) {
      var plugged = org.tugtest.bench.ringout.Scope.plugged(facts);
      sheets.add(sheet(harness, Scope.WHOLE, RingOut.of(facts, plugged)));
    }
    return sheets;
  }

  private static Document sheet(HarnessReport harness, Scope scope, RingOut ringOut) {
    boolean plugged = ringOut.scope().plugged();
    Facts facts = harness.facts();
    Rows rows = Rows.of(facts, ringOut);
    Markup html = new Markup();
    setup(html);
    RowMarkup tables = new RowMarkup(html);
    tables.pairs(
        "Joined",
        "Each pair must be joined: together they prove every net with the fewest readings. Take the"
            + " resistance of the leads off.",
        rows.joined(),
        true);
    tables.pairs(
        "Apart, side by side",
        "Nets in neighbouring cavities: no pair may be joined.",
        rows.apart(),
        false);
    tables.ties(
        "Apart, feeds from returns",
        "Tie the points on each lead together and measure insulation between the two.",
        rows.supply());
    tables.ties(
        "Apart, everything from everything",
        "With these few readings each net is proven apart from each other one: two nets are on"
            + " different leads in at least one of them. When one is bad, untie half of a side and"
            + " measure again until the pair is found.",
        rows.ties());
    String name = plugged ? "ring-out-plugged" : "ring-out";
    String file = name + (scope.loom().isEmpty() ? "" : "-" + scope.loom()) + ".csv";
    html.raw("<script type=\"application/json\" id=\"data\">");
    html.raw(
        RowJson.of(
            facts, RowMarkup.shown(rows), harness.root() + " " + scope.folder() + name, file));
    html.raw("</script>\n");
    Sheet.Builder sheet =
        Sheet.titled(scope, name, plugged ? "Ring-out, plugged together" : TITLE)
            .purpose(
                plugged
                    ? "To prove the whole wiring in the vehicle: joined what must be, apart the"
                        + " rest."
                    : "To prove the loom on the bench: joined what must be, apart the rest.")
            .note(
                plugged
                    ? "Battery off, fuses pulled, switches open, control units unplugged where"
                        + " insulation is measured."
                    : "The loom is out and unplugged; terminals of one stud are clipped together.")
            .note("No voltage may be on it. Never measure insulation through electronics.")
            .add(new Drawing(html.toString()))
            .add(new Words("What these readings cannot show", false, blind(ringOut.blind())))
            .signed()
            .landscape()
            .style(Assets.read(RingOutSheets.class, "ringout.css"))
            .script(
                Assets.elements()
                    + Assets.read(RingOutSheets.class, "judge.js")
                    + Assets.read(RingOutSheets.class, "ringout.js"));
    return new RingOutSheet(sheet.build(), ReadingsForm.of(rows.all()));
  }

  private static List<String> blind(List<Blind> blind) {
    List<String> lines = new ArrayList<>();
    for (Blind spot : blind) {
      String what = spot.what().id();
      lines.add(
          spot.fault() == Blind.Fault.OPEN
              ? "whether " + what + " is broken: " + spot.why()
              : "whether something touches " + what + ": " + spot.why());
    }
    if (lines.isEmpty()) {
      lines.add("nothing: every wire and every net is proven");
    }
    lines.add(
        "a joint that holds today and not on the road: move plugs and splices as you measure");
    return lines;
  }

  private static void setup(Markup html) {
    html.raw("<noscript><p>Answers on the spot need JavaScript; the tables do not.</p></noscript>");
    html.raw("<div class=\"setup js-flex\"><span class=\"grow\"><span id=\"progress\"");
    html.raw(" role=\"status\"></span><br><progress id=\"bar\" value=\"0\"></progress></span>");
    html.raw(
        "<label>By <input id=\"by\" size=\"8\" maxlength=\"60\" autocomplete=\"off\"></label>");
    html.raw("<label>Date <input id=\"date\" type=\"date\"></label>");
    method(html, "joined", "Joined with", List.of("meter", "lamp"));
    method(html, "apart", "Pairs apart with", List.of("meter", "insulation", "lamp"));
    method(html, "tie", "Ties with", List.of("insulation", "meter"));
    html.raw("<label><input id=\"left\" type=\"checkbox\"> hide what is OK</label>");
    html.raw("<button type=\"button\" id=\"save\">Save readings</button>");
    html.raw("<button type=\"button\" id=\"clear\">Clear</button></div>\n");
    html.raw("<p id=\"kept\" class=\"js-only soft\" role=\"status\">Type ohms, or");
    html.raw(" “open” or “joined”; Enter goes on to the next row. What is typed is");
    html.raw(" kept in this browser.</p>\n");
  }

  private static void method(Markup html, String kind, String label, List<String> words) {
    html.raw("<label>" + label + " <select id=\"method-" + kind + "\">");
    words.forEach(word -> html.raw("<option>" + word + "</option>"));
    html.raw("</select></label>");
  }
}
