package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.bench.retest.Retest;
import org.tugtest.bench.ringout.Apart;
import org.tugtest.bench.ringout.Blind;
import org.tugtest.bench.ringout.Probe;
import org.tugtest.report.RetestText;

/**
 * A pair that is measured again, or a wire that none can show.
 *
 * @param loom in words
 * @param to empty for a wire
 * @param should what the meter should show
 * @param why what the pair proves, or what brings the two together
 */
record RetestLine(String loom, String from, String to, String should, String why) {

  static List<RetestLine> of(Retest retest) {
    List<RetestLine> lines = new ArrayList<>();
    for (Retest.OfLoom loom : retest.looms()) {
      String title = loom.scope().title();
      for (Probe probe : loom.joined()) {
        String limit = RetestText.limit(probe);
        lines.add(
            new RetestLine(
                title,
                probe.from().text(),
                probe.to().text(),
                "joined, " + (probe.limitOhms() == null ? limit : "at most " + limit),
                "proves " + RetestText.proves(probe)));
      }
      for (Apart apart : loom.apart()) {
        lines.add(
            new RetestLine(title, apart.from().text(), apart.to().text(), "apart", apart.why()));
      }
      for (Blind blind : loom.blind()) {
        lines.add(
            new RetestLine(title, blind.what().id(), "", "a break stays unseen", blind.why()));
      }
    }
    return lines;
  }
}
