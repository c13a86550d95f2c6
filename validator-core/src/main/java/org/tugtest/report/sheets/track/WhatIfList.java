package org.tugtest.report.sheets.track;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.bench.whatif.Effect;
import org.tugtest.bench.whatif.Fault;
import org.tugtest.network.Edge;
import org.tugtest.report.sheets.Markup;

/** What each single fault takes, kind by kind; states in which it takes the same share a line. */
final class WhatIfList {
  private final Clues clues;
  private final Markup html;

  private WhatIfList(Clues clues, Markup html) {
    this.clues = clues;
    this.html = html;
  }

  static void add(Markup html, Clues clues) {
    new WhatIfList(clues, html).add();
  }

  private void add() {
    html.raw("<section id=\"what-if\" class=\"room\" data-tab=\"What if\">\n<h2>What if</h2>\n");
    if (!clues.leftOut().isEmpty()) {
      html.raw("<p>There is no table of faults: ").text(clues.leftOut()).raw(".</p></section>\n");
      return;
    }
    html.raw("<p>").text(SuspectsForm.ASSUMES).raw("</p>\n");
    Map<Fault.Kind, List<Clues.Culprit>> kinds = new LinkedHashMap<>();
    for (Clues.Culprit culprit : clues.faults()) {
      kinds.computeIfAbsent(culprit.fault().kind(), none -> new ArrayList<>()).add(culprit);
    }
    kinds.forEach(this::kind);
    silent();
    html.raw("</section>\n");
  }

  private void kind(Fault.Kind kind, List<Clues.Culprit> culprits) {
    Map<Integer, List<String>> byEffect = new LinkedHashMap<>();
    for (Clues.Culprit culprit : culprits) {
      byEffect
          .computeIfAbsent(culprit.effect(), none -> new ArrayList<>())
          .add(culprit.fault().text());
    }
    html.raw("<details class=\"losses\" open><summary>").text(heading(kind));
    html.raw(" <span class=\"n\">" + culprits.size() + "</span></summary>\n");
    html.raw("<div class=\"scroll\"><table class=\"stack\">\n<thead><tr><th>Fault</th>");
    html.raw("<th>What it does</th></tr></thead>\n<tbody>\n");
    byEffect.forEach(
        (effect, faults) -> {
          html.raw("<tr><th scope=\"row\">");
          faults.forEach(fault -> html.raw("<span class=\"line-of\">").text(fault).raw("</span>"));
          html.raw("</th><td>");
          lines(clues.effects().get(effect)).forEach((does, states) -> line(does, states));
          html.raw("</td></tr>\n");
        });
    html.raw("</tbody></table></div></details>\n");
  }

  private void line(String does, List<String> states) {
    boolean all = states.size() == clues.states().size() && states.size() > 1;
    html.raw("<p><b>").text(all ? "every state" : String.join(", ", states)).raw("</b>: ");
    html.text(does).raw("</p>");
  }

  /** What a fault does, with the states in which it does just that. */
  private static Map<String, List<String>> lines(List<Effect.InState> effect) {
    Map<String, List<String>> lines = new LinkedHashMap<>();
    for (Effect.InState in : effect) {
      List<String> parts = new ArrayList<>();
      part(parts, "dead: ", in.lost());
      part(parts, "too few volts: ", in.dim());
      part(parts, "live though it should not be: ", in.live());
      lines.computeIfAbsent(String.join("; ", parts), none -> new ArrayList<>()).add(in.state());
    }
    return lines;
  }

  private static void part(List<String> parts, String word, List<Edge.OfElement> loads) {
    if (!loads.isEmpty()) {
      parts.add(word + String.join(", ", loads.stream().map(Edge::text).toList()));
    }
  }

  private void silent() {
    if (clues.silent().isEmpty()) {
      return;
    }
    html.raw("<details class=\"losses\"><summary>Shows in no state <span class=\"n\">");
    html.raw(clues.silent().size() + "</span></summary>\n<p class=\"soft\">None of these takes");
    html.raw(" anything or leaves anything live in the states that the files give.</p>\n<p>");
    clues
        .silent()
        .forEach(fault -> html.raw("<span class=\"some\">").text(fault.text()).raw("</span> "));
    html.raw("</p></details>\n");
  }

  private static String heading(Fault.Kind kind) {
    return switch (kind) {
      case FUSE_BLOWN -> "Fuses blown, trips open";
      case CONNECTOR_OFF -> "Connectors unplugged";
      case EARTH_OPEN -> "Earths loose";
      case WIRE_OPEN -> "Wires broken";
      case DIODE_SHORTED -> "Diodes shorted";
      case ISOLATOR_WELDED -> "Isolator contacts welded";
    };
  }
}
