package org.tugtest.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tugtest.text.SourceText;
import org.tugtest.write.JsonText.Items;
import org.tugtest.write.JsonText.Member;
import org.tugtest.write.JsonText.Members;
import org.tugtest.write.JsonText.Scalar;
import org.tugtest.write.JsonText.Value;
import org.tugtest.write.Shape.Layout;

/**
 * The tidy form of a harness file, a record or a file of announced changes. Sections and properties
 * stand in the format's order, ids in natural order, two spaces a level. Lines are broken by what a
 * thing is, never by how wide it is, so that one changed wire is one changed line. Numbers and
 * texts are written as they were, escapes included; lists keep their order. Tidying twice changes
 * nothing more, and tidying never changes what a file means.
 */
public final class TidyWriter {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final JsonText json;
  private final StringBuilder out;

  private TidyWriter(JsonText json) {
    this.json = json;
    this.out = new StringBuilder(json.source().text().length() + 1_000);
  }

  /**
   * Tidies one file.
   *
   * @param path of the file, for problems
   * @param text as decoded; a byte-order mark is taken off and counts as a change
   */
  public static TidyResult tidy(String path, String text) {
    JsonText.Parsed parsed = JsonText.parse(SourceText.of(path, withoutMark(text)));
    JsonText json = parsed.text();
    if (json == null) {
      return new TidyResult.Refused(parsed.problems());
    }
    String tidy = tidy(json);
    return new TidyResult.Tidied(tidy, !tidy.equals(text));
  }

  /** The tidy form of a text that parsed. */
  static String tidy(JsonText json) {
    TidyWriter writer = new TidyWriter(json);
    writer.write(json.root(), FormatOrder.FILE, "");
    return writer.out.append('\n').toString();
  }

  static String withoutMark(String text) {
    return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
  }

  private void write(Value value, Shape shape, String indent) {
    if (value instanceof Scalar || isLine(value, shape)) {
      writeLine(value, shape);
    } else if (value instanceof Members members) {
      String inner = indent + "  ";
      String before = "{\n";
      for (Member member : sorted(members, shape)) {
        out.append(before).append(inner).append(json.rawName(member)).append(": ");
        write(member.value(), shape.of(member.name()), inner);
        before = ",\n";
      }
      out.append('\n').append(indent).append('}');
    } else if (value instanceof Items items) {
      String inner = indent + "  ";
      String before = "[\n";
      for (Value item : items.values()) {
        out.append(before).append(inner);
        write(item, shape.item(), inner);
        before = ",\n";
      }
      out.append('\n').append(indent).append(']');
    } else {
      throw new AssertionError(value);
    }
  }

  private void writeLine(Value value, Shape shape) {
    if (value instanceof Members members) {
      out.append('{');
      String before = "";
      for (Member member : sorted(members, shape)) {
        out.append(before).append(json.rawName(member)).append(": ");
        writeLine(member.value(), shape.of(member.name()));
        before = ", ";
      }
      out.append('}');
    } else if (value instanceof Items items) {
      out.append('[');
      String before = "";
      for (Value item : items.values()) {
        out.append(before);
        writeLine(item, shape.item());
        before = ", ";
      }
      out.append(']');
    } else {
      out.append(json.source().text(), value.start(), value.end());
    }
  }

  private static boolean isLine(Value value, Shape shape) {
    if (isEmpty(value) || shape.layout() == Layout.LINE) {
      return true;
    }
    return shape.layout() == Layout.BY_CONTENT && !holdsObject(value);
  }

  private static boolean isEmpty(Value value) {
    return value instanceof Members members
        ? members.byName().isEmpty()
        : value instanceof Items items && items.values().isEmpty();
  }

  private static boolean holdsObject(Value value) {
    if (value instanceof Members members) {
      return members.byName().values().stream().anyMatch(member -> isOrHoldsObject(member.value()));
    }
    return value instanceof Items items
        && items.values().stream().anyMatch(TidyWriter::isOrHoldsObject);
  }

  private static boolean isOrHoldsObject(Value value) {
    return value instanceof Members || holdsObject(value);
  }

  private static List<Member> sorted(Members members, Shape shape) {
    List<Member> sorted = new ArrayList<>(members.byName().values());
    sorted.sort(Comparator.comparing(Member::name, shape::compare));
    return sorted;
  }
}
