package org.tugtest.read;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Reading;
import org.tugtest.model.Ref;
import org.tugtest.text.Quoted;

/** One row of readings, by column; what is wrong goes to a sink of message and remedy. */
final class ReadingRow {
  private static final Map<String, Reading.Method> METHODS = Fields.words(Reading.Method.values());
  private static final Pattern REFERENCE =
      Pattern.compile("[A-Za-z0-9_-]{1,40}(:[A-Za-z0-9_.+-]{1,40}|\\.[A-Za-z0-9_-]{1,40})?");
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,12}(\\.[0-9]{1,12})?");
  private static final double MOST_OHMS = 1e10;

  private final Map<String, String> fields;
  private final BiConsumer<String, String> wrong;

  ReadingRow(Map<String, String> fields, BiConsumer<String, String> wrong) {
    this.fields = fields;
    this.wrong = wrong;
  }

  /** The reading; null when its ends or its result cannot be used. */
  @Nullable Reading reading() {
    Ref from = ref("from");
    Ref to = ref("to");
    Double ohms = ohms();
    Boolean joined = joined();
    Reading.Method method = method();
    LocalDate date = date();
    if (from == null || to == null) {
      return null;
    }
    if (ohms == null && joined == null) {
      if (field("ohms").isEmpty() && field("joined").isEmpty()) {
        wrong.accept(
            "the reading from " + from + " to " + to + " says neither ohms nor joined.",
            "Write the ohms, or yes or no under joined.");
      }
      return null;
    }
    return new Reading(from, to, ohms, joined, method, orNull("by"), date, orNull("note"));
  }

  private String field(String column) {
    return fields.getOrDefault(column, "");
  }

  private @Nullable String orNull(String column) {
    String field = field(column);
    return field.isEmpty() ? null : field;
  }

  private @Nullable Ref ref(String column) {
    String field = field(column);
    if (REFERENCE.matcher(field).matches()) {
      return Ref.parse(field);
    }
    wrong.accept(
        field.isEmpty()
            ? column + " is empty."
            : column + " is " + Quoted.text(field) + ", which is no reference.",
        "Write it as R1:3 (cavity), BAT:+ (pin) or S1 (splice).");
    return null;
  }

  private @Nullable Double ohms() {
    String field = field("ohms");
    if (field.isEmpty()) {
      return null;
    }
    if (NUMBER.matcher(field).matches() && Double.parseDouble(field) <= MOST_OHMS) {
      return Double.parseDouble(field);
    }
    wrong.accept(
        "ohms is " + Quoted.text(field) + ", which is no number from 0 to 10000000000.",
        "Write a plain number with a decimal point; for an open line write no under joined.");
    return null;
  }

  private @Nullable Boolean joined() {
    String field = field("joined").toLowerCase(Locale.ROOT);
    if (field.isEmpty()) {
      return null;
    }
    if (field.equals("yes") || field.equals("no")) {
      return field.equals("yes");
    }
    wrong.accept("joined is " + Quoted.text(field) + ".", "Write yes or no.");
    return null;
  }

  private Reading.@Nullable Method method() {
    String field = field("method").toLowerCase(Locale.ROOT);
    Reading.Method method = METHODS.get(field);
    if (method == null && !field.isEmpty()) {
      wrong.accept("method is " + Quoted.text(field) + ".", "Write meter, lamp or insulation.");
    }
    return method;
  }

  private @Nullable LocalDate date() {
    String field = field("date");
    if (field.isEmpty()) {
      return null;
    }
    try {
      return LocalDate.parse(field);
    } catch (DateTimeParseException notADay) {
      wrong.accept("date is " + Quoted.text(field) + ".", "Write the day as YYYY-MM-DD.");
      return null;
    }
  }
}
