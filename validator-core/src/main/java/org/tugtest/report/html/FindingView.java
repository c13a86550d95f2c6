package org.tugtest.report.html;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Waiver;
import org.tugtest.report.html.text.Few;

/**
 * A finding as a page shows it.
 *
 * @param number from 1, in the order of the page; its anchor is {@code finding-N}
 * @param blocks whether the gate stops at it
 * @param looms looms of its subjects
 * @param follows what it follows from, in words; empty when it stands alone or below its cause
 * @param code its places with the lines around, the first being where a person would edit
 * @param more places left out
 * @param follow findings that follow from it
 * @param steps the sheet that says how its remedy is done, from the page; empty: none
 */
record FindingView(
    int number,
    Finding finding,
    @Nullable Waiver waiver,
    boolean blocks,
    List<String> looms,
    String follows,
    List<CodeView> code,
    int more,
    Few<FindingView> follow,
    String steps) {
  private static final int MOST_LINES = 24;

  /** Its subjects, as far as a page takes them. */
  Few<Subject> about() {
    return Few.of(finding.subjects(), MOST_LINES);
  }

  /** Its details, as far as a page takes them. */
  Few<String> details() {
    return Few.of(finding.details(), MOST_LINES);
  }

  Level level() {
    return finding.level();
  }

  /** The word for its level, or that it is waived. */
  String sign() {
    return waiver == null ? level().word() : "waived";
  }

  /** {@code 2 against at most 1}, units included; empty when nothing was measured. */
  String measured() {
    var measured = finding.measured();
    if (measured == null) {
      return "";
    }
    String unit = measured.unit().isEmpty() ? "" : " " + measured.unit().replace("mm2", "mm²");
    String bound =
        measured.bound() == org.tugtest.finding.Measured.Bound.AT_MOST ? "at most " : "at least ";
    return measured.actualShown() + unit + ", limit " + bound + measured.limitShown() + unit;
  }

  /** The looms for the filter, joined by blanks, which no id holds. */
  String loomKeys() {
    return String.join(" ", looms);
  }
}
