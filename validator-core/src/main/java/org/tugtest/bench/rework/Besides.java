package org.tugtest.bench.rework;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.FusePart;
import org.tugtest.model.Layout;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** What else is done to a loom whose wires stay where they are: its fuses and its coverings. */
final class Besides {
  private static final int MOST_NAMED = 12;
  private final Facts now;
  private final Facts target;

  Besides(Facts now, Facts target) {
    this.now = now;
    this.target = target;
  }

  /** A sentence for each fuse way, then one for each segment. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    Set<String> ways = new TreeSet<>(NaturalOrder.NATURAL);
    ways.addAll(now.harness().fitted().keySet());
    ways.addAll(target.harness().fitted().keySet());
    ways.forEach(way -> fuse(sentences, way));
    Set<String> segments = new TreeSet<>(NaturalOrder.NATURAL);
    segments.addAll(now.harness().layout().segments().keySet());
    segments.retainAll(target.harness().layout().segments().keySet());
    segments.forEach(segment -> coverings(sentences, segment));
    return sentences;
  }

  private void fuse(List<String> sentences, String way) {
    String is = now.harness().fitted().get(way);
    String becomes = target.harness().fitted().get(way);
    if (Objects.equals(is, becomes) || sameFuse(is, becomes)) {
      return;
    }
    String out = is == null ? "" : "take out fuse " + fuse(now, is);
    String in = becomes == null ? "" : "put in fuse " + fuse(target, becomes);
    sentences.add(way + ": " + out + (out.isEmpty() || in.isEmpty() ? "" : ", ") + in);
  }

  /** Another name alone is no reason to touch a fuse. */
  private boolean sameFuse(@Nullable String is, @Nullable String becomes) {
    FusePart one = is == null ? null : now.harness().parts().fuses().get(is);
    FusePart other = becomes == null ? null : target.harness().parts().fuses().get(becomes);
    return one != null
        && other != null
        && Objects.equals(one.ratingA(), other.ratingA())
        && Objects.equals(one.style(), other.style());
  }

  private static String fuse(Facts facts, String id) {
    FusePart part = facts.harness().parts().fuses().get(id);
    Double rating = part == null ? null : part.ratingA();
    return id + (rating == null ? "" : " (" + Quoted.number(rating) + " A)");
  }

  private void coverings(List<String> sentences, String id) {
    List<String> is = coverings(now, id);
    List<String> becomes = coverings(target, id);
    List<String> off = new ArrayList<>(is);
    becomes.forEach(off::remove);
    List<String> on = new ArrayList<>(becomes);
    is.forEach(on::remove);
    if (!off.isEmpty() || !on.isEmpty()) {
      String out = off.isEmpty() ? "" : "take " + Series.and(off, MOST_NAMED) + " off";
      String in = on.isEmpty() ? "" : "put " + Series.and(on, MOST_NAMED) + " on";
      sentences.add(
          "segment " + id + ": " + out + (off.isEmpty() || on.isEmpty() ? "" : ", ") + in);
    }
  }

  private static List<String> coverings(Facts facts, String id) {
    Layout.Segment segment = facts.harness().layout().segments().get(id);
    return segment == null ? List.of() : segment.coverings();
  }
}
