package org.tugtest.report.html;

import java.util.Set;
import org.tugtest.finding.Subject;

/** What to type into the search box for a subject. */
final class SubjectKey {
  private static final Set<String> SEARCHED = Set.of("wires", "connectors", "devices", "splices");

  private SubjectKey() {}

  /** {@code R1:3}, {@code W14}, {@code ECU}; empty when the search does not know such things. */
  static String of(Subject subject) {
    if (!SEARCHED.contains(subject.section())) {
      return "";
    }
    return subject.id().indexOf(':') >= 0 ? subject.id() : owner(subject);
  }

  /** The id without cavity, pin, element or port. */
  static String owner(Subject subject) {
    String id = subject.id();
    int colon = id.indexOf(':');
    int cut = colon >= 0 ? colon : id.indexOf('.');
    return cut < 0 ? id : id.substring(0, cut);
  }
}
