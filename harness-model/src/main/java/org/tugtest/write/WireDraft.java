package org.tugtest.write;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A wire while its row is read: values so far, and what goes into its note. */
final class WireDraft {
  private static final int LONGEST_NOTE = 4_000;

  private final int row;
  private final Map<String, String> fields = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();
  private @Nullable String from;
  private @Nullable String to;
  private String loom = "";

  WireDraft(int row) {
    this.row = row;
  }

  int row() {
    return row;
  }

  @Nullable String from() {
    return from;
  }

  @Nullable String to() {
    return to;
  }

  String loom() {
    return loom;
  }

  void from(@Nullable String reference) {
    from = reference;
    text("from", reference);
  }

  void to(@Nullable String reference) {
    to = reference;
    text("to", reference);
  }

  void loom(String id) {
    loom = id;
  }

  /** Sets a text; null leaves it out. */
  void text(String name, @Nullable String value) {
    if (value != null) {
      fields.put(name, Quoting.quote(value));
    }
  }

  /** Sets a number, as its digits. */
  void number(String name, String digits) {
    fields.put(name, digits);
  }

  /** Sets what is true of it. */
  void flag(String name) {
    fields.put(name, "true");
  }

  boolean hasSize() {
    return fields.containsKey("areaMm2") || fields.containsKey("awg");
  }

  /** Adds to the note; {@code header} is empty for a note of the list itself. */
  void note(String header, String cell) {
    notes.add(header.isEmpty() ? cell : header + ": " + cell);
  }

  boolean noteIsTooLong() {
    return note().length() > LONGEST_NOTE;
  }

  private String note() {
    return printable(String.join("; ", notes));
  }

  /** The wire as an object of JSON. */
  String json() {
    Map<String, String> all = new LinkedHashMap<>(fields);
    if (!notes.isEmpty()) {
      String note = note();
      all.put("note", Quoting.quote(cut(note, LONGEST_NOTE)));
    }
    StringBuilder out = new StringBuilder("{");
    String before = "";
    for (Map.Entry<String, String> field : all.entrySet()) {
      out.append(before).append('"').append(field.getKey()).append("\": ").append(field.getValue());
      before = ", ";
    }
    return out.append('}').toString();
  }

  /** A text without the characters that the format does not take. */
  static String printable(String text) {
    return text.replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\x7F\\uFFFE\\uFFFF]", " ");
  }

  /** The first characters of a text, none of them torn in two. */
  static String cut(String text, int longest) {
    if (text.length() <= longest) {
      return text;
    }
    int end = Character.isHighSurrogate(text.charAt(longest - 1)) ? longest - 1 : longest;
    return text.substring(0, end);
  }
}
