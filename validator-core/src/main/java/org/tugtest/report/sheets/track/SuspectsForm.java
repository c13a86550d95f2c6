package org.tugtest.report.sheets.track;

import org.tugtest.report.sheets.Markup;

/** The room in which a person ticks what is seen. */
final class SuspectsForm {
  /** What the table of faults takes for granted. */
  static final String ASSUMES =
      "One fault at a time, in a vehicle that is wired as the files say; computed, not measured."
          + " Fuses blown, plugs off, earths loose and wires broken, each whole and for good;"
          + " diodes shorted and isolator contacts welded. Control units are taken to switch as"
          + " each state says. No shorts to earth, no bad contact, no faulty load or switch.";

  private SuspectsForm() {}

  static void add(Markup html, Clues clues) {
    html.raw("<section id=\"faults\" class=\"room\" data-tab=\"Find a fault\">\n");
    html.raw("<h2>Symptom to suspects</h2>\n");
    if (!clues.leftOut().isEmpty()) {
      html.raw("<p>There is no table of faults to search: ").text(clues.leftOut());
      html.raw(".</p></section>\n");
      return;
    }
    if (clues.faults().isEmpty()) {
      html.raw("<p>No single fault shows at any load in the states that the files give.</p>");
      html.raw("</section>\n");
      return;
    }
    html.raw("<noscript><p>This room needs JavaScript.</p></noscript>\n");
    html.raw("<div class=\"js-only\">\n<details class=\"soft\"><summary>One fault at a time,");
    html.raw(" computed from the files. What else is taken for granted</summary><p>");
    html.text(ASSUMES);
    if (clues.readings().isEmpty()) {
      html.text(" The readings of a voltmeter are left out: they would make this page too big.");
    }
    html.raw("</p></details>\n<div id=\"seen\"></div>\n");
    html.raw("<div id=\"suspects\" aria-live=\"polite\"></div>\n");
    html.raw("<form id=\"symptoms\">\n<p class=\"pick\"><label for=\"state\">State of the");
    html.raw(" vehicle</label> <select id=\"state\"></select></p>\n");
    html.raw("<p class=\"pick\"><label for=\"load-filter\">Show</label>");
    html.raw(" <input id=\"load-filter\" type=\"search\" autocomplete=\"off\"");
    html.raw(" placeholder=\"part of a load's name\"></p>\n");
    html.raw("<div id=\"load-list\"></div>\n<button type=\"button\" id=\"count\"");
    html.raw(" hidden></button>\n</form>\n</div>\n</section>\n");
  }
}
