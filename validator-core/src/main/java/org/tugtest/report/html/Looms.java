package org.tugtest.report.html;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Group;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.text.NaturalOrder;

/** Which looms the subjects of a finding belong to. */
final class Looms {
  private final Harness harness;

  Looms(Harness harness) {
    this.harness = harness;
  }

  /** The looms of all subjects; empty when they belong to none. */
  Set<String> of(Collection<Subject> subjects) {
    Set<String> looms = new TreeSet<>(NaturalOrder.NATURAL);
    for (Subject subject : subjects) {
      String loom = of(subject);
      if (loom != null) {
        looms.add(loom);
      }
    }
    return looms;
  }

  private @Nullable String of(Subject subject) {
    String id = SubjectKey.owner(subject);
    return switch (subject.section()) {
      case "wires" -> loom(harness.wires().get(id), Wire::loom);
      case "connectors" -> loom(harness.connectors().get(id), Connector::loom);
      case "splices" -> loom(harness.splices().get(id), Splice::loom);
      case "groups" -> loom(harness.groups().get(id), Group::loom);
      case "segments" -> loom(harness.layout().segments().get(id), Layout.Segment::loom);
      case "looms" -> id;
      default -> null;
    };
  }

  private static <T> @Nullable String loom(@Nullable T thing, Function<T, @Nullable String> its) {
    return thing == null ? null : its.apply(thing);
  }
}
