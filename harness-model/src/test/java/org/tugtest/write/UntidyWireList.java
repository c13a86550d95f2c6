package org.tugtest.write;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * A wire list as people keep them: 200 wires between blank rows, in two notations of colour, with
 * decimal commas, odd blanks and one doubled cavity. The same seed gives the same list.
 */
final class UntidyWireList {
  static final int WIRES = 200;

  private static final Map<String, List<String>> COLOURS =
      Map.of(
          "RD", List.of("RD", "rd", "red", "Rot", "rt", "RED"),
          "BK", List.of("BK", "black", "schwarz", "sw", "BLK"),
          "WH", List.of("WH", "White", "weiß", "ws", "WHT"),
          "YE", List.of("YE", "yellow", "gelb", "ge", "YEL"));

  private final byte[] content;
  private final List<String> ends;

  private UntidyWireList(byte[] content, List<String> ends) {
    this.content = content;
    this.ends = List.copyOf(ends);
  }

  /** The list of a seed. */
  static UntidyWireList of(long seed) {
    Random random = new Random(seed);
    String separator = List.of(";", ",", "\t").get(random.nextInt(3));
    String lineEnd = random.nextBoolean() ? "\r\n" : "\n";
    StringBuilder out = new StringBuilder();
    for (int i = random.nextInt(4); i > 0; i--) {
      out.append("Wire list of the bench")
          .append(separator)
          .append("sheet ")
          .append(i)
          .append(lineEnd);
    }
    boolean pins = random.nextBoolean();
    List<String> header =
        pins
            ? List.of("From", "Pin", "To", "Pin", "Farbe", "mm²", "Remarks")
            : List.of(" von", "NACH", "colour ", "Querschnitt", "Note");
    out.append(String.join(separator, header)).append(lineEnd);
    List<String> ends = new ArrayList<>();
    for (int i = 0; i < WIRES; i++) {
      if (random.nextInt(9) == 0) {
        out.append(random.nextBoolean() ? "" : separator.repeat(random.nextInt(6))).append(lineEnd);
      }
      String from = "R" + (1 + i / 20);
      String fromPin = String.valueOf(1 + i % 20);
      String to = "X" + (1 + i / 25);
      String toPin = i == WIRES - 1 ? "1" : "A" + (1 + i % 25);
      if (i == WIRES - 2) {
        toPin = "1";
      }
      ends.add(from + ":" + fromPin + " " + to + ":" + toPin);
      List<String> cells = new ArrayList<>();
      if (pins) {
        cells.addAll(List.of(from, fromPin, to, toPin));
      } else {
        cells.add(joined(from, fromPin, random));
        cells.add(joined(to, toPin, random));
      }
      cells.add(colour(random));
      cells.add(size(random, separator));
      cells.add(random.nextInt(5) == 0 ? "\"look" + separator + " again\"" : "");
      List<String> blanks =
          cells.stream().map(cell -> random.nextInt(6) == 0 ? cell + " " : cell).toList();
      out.append(String.join(separator, blanks)).append(lineEnd);
    }
    boolean windows = random.nextBoolean();
    Charset charset = windows ? Charset.forName("windows-1252") : StandardCharsets.UTF_8;
    String mark = !windows && random.nextBoolean() ? "\uFEFF" : "";
    return new UntidyWireList((mark + out).getBytes(charset), ends);
  }

  /** Its bytes. */
  byte[] content() {
    return content.clone();
  }

  /** What each wire joins, in order. */
  List<String> ends() {
    return ends;
  }

  /** The cavity that two wires end in. */
  static String doubled() {
    return "X8:1";
  }

  private static String joined(String owner, String pin, Random random) {
    List<String> marks = List.of(":", " : ", "-", "/", " ", ".", " pin ", " Pin");
    return owner + marks.get(random.nextInt(marks.size())) + pin;
  }

  private static String colour(Random random) {
    List<String> bases = List.of("RD", "BK");
    List<String> stripes = List.of("WH", "YE");
    String base = pick(COLOURS.get(bases.get(random.nextInt(2))), random);
    String stripe = pick(COLOURS.get(stripes.get(random.nextInt(2))), random);
    return random.nextBoolean() ? base : base + pick(List.of("/", "-", " "), random) + stripe;
  }

  private static String size(Random random, String separator) {
    double area = pick(List.of(0.35, 0.5, 0.75, 1.0, 2.5), random);
    String plain = String.format(Locale.ROOT, random.nextBoolean() ? "%.2f" : "%.2f mm²", area);
    String comma = plain.replace('.', ',');
    String quoted = separator.equals(",") ? '"' + comma + '"' : comma;
    return switch (random.nextInt(4)) {
      case 0 -> "AWG 20";
      case 1 -> quoted;
      default -> plain;
    };
  }

  private static <T> T pick(List<T> from, Random random) {
    return from.get(random.nextInt(from.size()));
  }
}
