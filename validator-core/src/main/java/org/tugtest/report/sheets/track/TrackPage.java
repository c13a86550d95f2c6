package org.tugtest.report.sheets.track;

import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.html.Assets;
import org.tugtest.report.html.RoomDrawings;
import org.tugtest.report.html.circuits.Circuit;
import org.tugtest.report.html.circuits.CircuitsRoom;
import org.tugtest.report.html.fuses.FusesRoom;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.Drawing;
import org.tugtest.report.sheets.Markup;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;

/**
 * One page for the telephone at the track: what is on a pin, which single faults fit what is seen,
 * fuses, isolator, connectors, circuits, and what each fault takes.
 */
public final class TrackPage implements DocumentMaker {
  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    Clues clues = Clues.of(facts);
    CircuitsRoom circuits = CircuitsRoom.of(facts);
    Markup html = new Markup();
    html.raw(
        "<p class=\"on-paper\">The search and the finder of faults are on the screen alone.</p>\n");
    html.raw("<nav id=\"tabs\" class=\"tabs no-print\" aria-label=\"Rooms of this page\"></nav>\n");
    ask(html);
    SuspectsForm.add(html, clues);
    room(html, "Fuses", RoomDrawings.fuses(FusesRoom.of(facts, circuits.circuits())));
    IsolatorCard.add(html, facts);
    PlugMap.add(html, facts);
    room(html, "Circuits", RoomDrawings.circuits(circuits) + onPaper(circuits.circuits()));
    WhatIfList.add(html, clues);
    html.raw("<script type=\"application/json\" id=\"data\">");
    html.raw(TrackData.json(facts, clues, circuits.circuits())).raw("</script>\n");
    return List.of(
        Sheet.titled(Scope.WHOLE, "track", "Track page")
            .under(Sheet.TRACK)
            .purpose("For the telephone at the track: find a pin, a fuse, a plug, a fault.")
            .add(new Drawing(html.toString()))
            .style(Assets.rooms() + Assets.read(TrackPage.class, "track.css"))
            .script(
                Assets.wiring()
                    + Assets.read(TrackPage.class, "suspects.js")
                    + Assets.read(TrackPage.class, "track.js")
                    + Assets.read(TrackPage.class, "symptoms.js"))
            .build());
  }

  private static void ask(Markup html) {
    html.raw(
        "<section id=\"ask\" class=\"room\" data-tab=\"Pin\">\n<h2>What is on this pin?</h2>\n");
    html.raw("<noscript><p>The search needs JavaScript; the rooms below do not.</p></noscript>\n");
    html.raw("<form id=\"ask-form\" class=\"js-only\" role=\"search\">\n");
    html.raw("<label for=\"ask-box\">Pin, cavity, wire, label, plug, device, circuit or fuse");
    html.raw("</label>\n<p class=\"ask-row\"><input id=\"ask-box\" type=\"search\"");
    html.raw(" autocomplete=\"off\" autocapitalize=\"off\" spellcheck=\"false\"");
    html.raw(" enterkeyhint=\"search\"><button type=\"submit\">Find</button></p>\n");
    html.raw("<p id=\"ask-status\" class=\"soft\" role=\"status\"></p>\n</form>\n");
    html.raw("<div id=\"ask-answer\"></div>\n</section>\n");
  }

  /** Each circuit in a line: those that are unfolded on the screen are printed whole beside. */
  private static String onPaper(List<Circuit> circuits) {
    Markup html = new Markup().raw("<ul class=\"on-paper\">\n");
    for (Circuit circuit : circuits) {
      html.raw("<li>").element("b", circuit.load()).text(" " + String.join(", ", circuit.says()));
      html.text(circuit.steps().isEmpty() ? "" : ": ");
      for (int i = 0; i < circuit.steps().size(); i++) {
        Circuit.Step step = circuit.steps().get(i);
        html.text(i == 0 ? "" : " – ");
        html.raw(step.turn() ? "<b>" : "").text(step.name()).raw(step.turn() ? "</b>" : "");
      }
      html.raw("</li>\n");
    }
    return html.raw("</ul>\n").toString();
  }

  private static void room(Markup html, String tab, String drawn) {
    html.raw("<div class=\"of-report\" data-tab=\"" + tab + "\">\n").raw(drawn).raw("</div>\n");
  }
}
