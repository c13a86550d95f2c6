package org.tugtest.report.sheets.track;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.protect.Exposure;
import org.tugtest.protect.Protection;
import org.tugtest.report.html.text.ElementText;
import org.tugtest.text.Series;

/** What protects each wire, in words that many wires share. */
final class Protecting {
  private static final int MOST_NAMED = 6;
  private final Map<String, Integer> sentences = new LinkedHashMap<>();
  private final Map<String, Integer> of = new HashMap<>();

  Protecting(Facts facts) {
    Protection protection = facts.protection();
    ElementText text = new ElementText(protection.ratings());
    for (String wire : facts.harness().wires().keySet()) {
      String sentence = sentence(protection, text, wire);
      Integer number = sentences.putIfAbsent(sentence, sentences.size());
      of.put(wire, number == null ? sentences.size() - 1 : number);
    }
  }

  private static String sentence(Protection protection, ElementText text, String wire) {
    Optional<Exposure> feed = protection.exposure(wire);
    if (feed.isPresent()) {
      List<String> cut =
          feed.get().cut().stream().map(fuse -> fuse.text() + " (" + text.of(fuse) + ")").toList();
      if (feed.get().unbounded()) {
        return "no fuse before it on at least one way";
      }
      return cut.isEmpty() ? "nothing known" : Series.and(cut, MOST_NAMED);
    }
    if (protection.returning(wire).isEmpty()) {
      return "";
    }
    return protection.returnsUnfusedAlone(wire)
        ? "return side, of loads without a fuse"
        : "return side; the fuses stand where its loads are fed";
  }

  /** All sentences; an empty one for wires on neither side. */
  List<String> sentences() {
    return List.copyOf(sentences.keySet());
  }

  /** The number of the sentence of a wire. */
  int of(String wire) {
    return of.getOrDefault(wire, -1);
  }
}
