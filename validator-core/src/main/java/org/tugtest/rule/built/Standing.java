package org.tugtest.rule.built;

import java.time.LocalDate;
import java.util.Optional;
import org.tugtest.facts.Deviation;
import org.tugtest.finding.Finding;
import org.tugtest.model.BuildRecord;

/** Whether a deviation may stand, and what a finding on it says. */
final class Standing {
  static final String SOURCE =
      """
      A deviation that is written down, with reason and decision, is no mistake; one that is not
      accepted is not decided (common practice; public purchase specifications ask for records of
      the loom as built).
      """;
  static final String ACCEPT =
      """
      Put it right in the loom, or decide on it: an entry of the record with "accepted": true, and
      "until" where it holds for a time only. What shall stay comes into the plan with the goal
      as-built.
      """;

  private Standing() {}

  /** Why a deviation blocks; empty when the team accepts it. */
  static Optional<String> blocked(Deviation deviation, LocalDate today) {
    if (!deviation.accepted()) {
      return Optional.of("nobody has accepted that");
    }
    if (deviation.safe() == BuildRecord.Safe.NO) {
      return Optional.of("it is accepted, and yet noted as not safe to run");
    }
    LocalDate until = deviation.until();
    return until != null && until.isBefore(today)
        ? Optional.of("it was accepted until " + until)
        : Optional.empty();
  }

  /** A finding on a deviation, without figure and level. */
  static Finding.Draft finding(Deviation deviation, String why) {
    Finding.Draft draft =
        Finding.on(deviation.subject())
            .kind(deviation.what())
            .message(deviation.what() + "; " + why)
            .remedy(
                "put it right, or accept it in the record (\"accepted\": true, \"until\"): "
                    + deviation.told())
            .at(deviation.at());
    if (!deviation.reason().isEmpty()) {
      draft.detail("reason: " + deviation.reason());
    }
    return draft;
  }
}
