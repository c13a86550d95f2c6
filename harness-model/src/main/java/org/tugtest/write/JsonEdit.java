package org.tugtest.write;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tugtest.write.JsonText.Member;
import org.tugtest.write.JsonText.Members;
import org.tugtest.write.JsonText.Value;
import org.tugtest.write.Shape.Layout;

/**
 * Changes to single values of one JSON text. All that is not changed stays character for character;
 * a new member goes where the format's order puts it, with the blanks and line ends of its
 * neighbours.
 */
final class JsonEdit {
  /** Stands for the indent where everything is on one line. */
  private static final String ONE_LINE = "\u0000";

  private final JsonText json;
  private final String text;
  private final String lineEnd;
  private final Change root = new Change();

  JsonEdit(JsonText json) {
    this.json = json;
    this.text = json.source().text();
    this.lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
  }

  /** What becomes of one value: replaced, removed, or changed further inside. */
  private static final class Change {
    private final Map<String, Change> inner = new HashMap<>();
    private @Nullable String raw;
    private boolean removed;
  }

  /**
   * Writes {@code raw} (a token) at the place that these names lead to, with the objects that are
   * missing on the way.
   */
  void set(List<String> names, String raw) {
    Change change = at(names);
    change.raw = raw;
    change.removed = false;
  }

  /** The same, where nothing stands at that place yet. */
  void setIfMissing(List<String> names, String raw) {
    if (json.at(names.toArray(String[]::new)) == null) {
      set(names, raw);
    }
  }

  /** Whether all that stands on the way to that place are objects. */
  boolean fits(List<String> names) {
    Value value = json.root();
    for (String name : names) {
      if (!(value instanceof Members members)) {
        return false;
      }
      value = members.get(name);
      if (value == null) {
        return true;
      }
    }
    return true;
  }

  /** Takes a member out; nothing happens where there is none. */
  void remove(List<String> names) {
    if (json.at(names.toArray(String[]::new)) != null) {
      Change change = at(names);
      change.raw = null;
      change.removed = true;
    }
  }

  boolean isEmpty() {
    return root.inner.isEmpty();
  }

  private Change at(List<String> names) {
    Change change = root;
    for (String name : names) {
      change.raw = null;
      change = change.inner.computeIfAbsent(name, missing -> new Change());
    }
    return change;
  }

  /** The text with all changes made. */
  String text() {
    Members all = json.root();
    return text.substring(0, all.start())
        + changedValue(all, root, FormatOrder.FILE, "")
        + text.substring(all.end());
  }

  private String changedValue(Value value, Change change, Shape shape, String indent) {
    if (change.raw != null) {
      return change.raw;
    }
    if (change.inner.isEmpty()) {
      return json.raw(value);
    }
    return value instanceof Members members
        ? changed(members, change, shape, indent)
        : written(change, shape, indent);
  }

  /** One member of the changed object; {@code index} is where it stood, negative for a new one. */
  private record Kept(String name, int index, @Nullable Member member) {}

  private String changed(Members members, Change change, Shape shape, String indent) {
    List<Member> before = List.copyOf(members.byName().values());
    if (before.isEmpty()) {
      return written(change, shape, indent);
    }
    Deque<Kept> after = merged(before, change, shape);
    if (after.isEmpty()) {
      return "{}";
    }
    String first = text.substring(members.start() + 1, before.get(0).start());
    String between =
        before.size() > 1 ? gap(before, 1) : "," + (first.indexOf('\n') >= 0 ? first : " ");
    StringBuilder out = new StringBuilder("{").append(first);
    boolean follows = false;
    for (Kept kept : after) {
      if (follows) {
        out.append(kept.index() > 0 ? gap(before, kept.index()) : between);
      }
      follows = true;
      write(out, kept, change, shape, indentOf(between, indent));
    }
    return out.append(text, before.get(before.size() - 1).value().end(), members.end()).toString();
  }

  private void write(StringBuilder out, Kept kept, Change change, Shape shape, String indent) {
    Change inner = change.inner.get(kept.name());
    Member member = kept.member();
    Shape innerShape = shape.of(kept.name());
    if (member == null) {
      out.append(Quoting.quote(kept.name())).append(": ");
      out.append(written(Objects.requireNonNull(inner), innerShape, indent));
    } else if (inner == null) {
      out.append(text, member.start(), member.value().end());
    } else {
      out.append(text, member.start(), member.value().start());
      out.append(changedValue(member.value(), inner, innerShape, indent));
    }
  }

  /**
   * The members left and the new ones: each new one behind the last that comes before it in the
   * format's order.
   */
  private static Deque<Kept> merged(List<Member> before, Change change, Shape shape) {
    Set<String> there = before.stream().map(Member::name).collect(Collectors.toSet());
    List<String> added = new ArrayList<>();
    change.inner.forEach(
        (name, inner) -> {
          if (!inner.removed && !there.contains(name)) {
            added.add(name);
          }
        });
    added.sort(shape::compare);
    Deque<Kept> merged = new ArrayDeque<>();
    int next = added.size() - 1;
    for (int i = before.size() - 1; i >= 0; i--) {
      Member member = before.get(i);
      Change inner = change.inner.get(member.name());
      if (inner != null && inner.removed) {
        continue;
      }
      while (next >= 0 && shape.compare(added.get(next), member.name()) > 0) {
        merged.addFirst(new Kept(added.get(next--), -1, null));
      }
      merged.addFirst(new Kept(member.name(), i, member));
    }
    while (next >= 0) {
      merged.addFirst(new Kept(added.get(next--), -1, null));
    }
    return merged;
  }

  private String gap(List<Member> members, int index) {
    return text.substring(members.get(index - 1).value().end(), members.get(index).start());
  }

  /** The indent of lines that follow such a gap; a gap without a line end keeps all on one line. */
  private static String indentOf(String gap, String indent) {
    int end = gap.lastIndexOf('\n');
    return end < 0 ? ONE_LINE : indent.equals(ONE_LINE) ? ONE_LINE : gap.substring(end + 1);
  }

  /** A value that is new as a whole. */
  private String written(Change change, Shape shape, String indent) {
    if (change.raw != null) {
      return change.raw;
    }
    List<Map.Entry<String, Change>> members =
        change.inner.entrySet().stream()
            .filter(member -> !member.getValue().removed)
            .sorted(Map.Entry.comparingByKey(shape::compare))
            .toList();
    if (members.isEmpty()) {
      return "{}";
    }
    boolean lines = !indent.equals(ONE_LINE) && breaks(members, shape);
    String inner = lines ? indent + "  " : ONE_LINE;
    String between = lines ? "," + lineEnd + inner : ", ";
    StringBuilder out = new StringBuilder("{").append(lines ? lineEnd + inner : "");
    String before = "";
    for (Map.Entry<String, Change> member : members) {
      out.append(before).append(Quoting.quote(member.getKey())).append(": ");
      out.append(written(member.getValue(), shape.of(member.getKey()), inner));
      before = between;
    }
    return out.append(lines ? lineEnd + indent : "").append('}').toString();
  }

  private static boolean breaks(List<Map.Entry<String, Change>> members, Shape shape) {
    if (shape.layout() != Layout.BY_CONTENT) {
      return shape.layout() == Layout.OPEN;
    }
    return members.stream().anyMatch(member -> member.getValue().raw == null);
  }
}
