package org.tugtest.rule.written.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.text.Nearest;
import org.tugtest.text.Place;
import org.tugtest.text.Series;

/** Collects who names what; what is there is only counted. */
final class Mentions {
  static final String MISREAD = "what it names is not written rightly";
  static final String TYPE = "the type of a device that it names is not known";

  private static final int SHOWN = 3;
  private static final int LISTED = 12;

  /** So many comparisons of names are made to suggest others; then only the advice is given. */
  private static final long MOST_COMPARISONS = 4_000_000;

  private final Facts facts;
  private final Set<Subject> holders = new LinkedHashSet<>();
  private final Set<Subject> bad = new LinkedHashSet<>();
  private final Map<Subject, String> unjudged = new TreeMap<>();
  private final Map<String, Gathered> missing = new LinkedHashMap<>();
  private long comparisons;

  Mentions(Facts facts) {
    this.facts = facts;
  }

  /** All that is gathered about one missing thing. */
  private record Gathered(
      @Nullable Table table, String id, List<Mention> mentions, String message, String remedy) {}

  private record Mention(Holder by, Place at) {}

  /** {@code by} names {@code id} in the field that {@code path} leads to; null names nothing. */
  void id(Holder by, Table table, @Nullable String id, String... path) {
    if (id == null) {
      return;
    }
    holders.add(by.subject());
    if (table.ids().contains(id)) {
      return;
    }
    if (table.open() && !facts.unread().isEmpty()) {
      unjudged(by, Facts.FILE_UNREAD);
    } else if (isMisread(table, id)) {
      unjudged(by, MISREAD);
    } else {
      gather(table.noun() + " " + id, new Gathered(table, id, new ArrayList<>(), "", ""), by, path);
    }
  }

  /** {@code by} names several in the list {@code field}. */
  void ids(Holder by, Table table, List<String> ids, String field) {
    for (int i = 0; i < ids.size(); i++) {
      id(by, table, ids.get(i), field, Integer.toString(i));
    }
  }

  /** What {@code by} says at {@code path} cannot be, although all that it names is there. */
  void wrong(Holder by, String kind, String message, String remedy, String... path) {
    holders.add(by.subject());
    gather(
        by.subject().place() + " " + kind,
        new Gathered(null, kind, new ArrayList<>(), message, remedy),
        by,
        path);
  }

  /** What {@code by} says is right, or another rule's matter. */
  void right(Holder by) {
    holders.add(by.subject());
  }

  /** What {@code by} names could not be judged. */
  void unjudged(Holder by, String reason) {
    holders.add(by.subject());
    unjudged.putIfAbsent(by.subject(), reason);
  }

  Facts facts() {
    return facts;
  }

  private boolean isMisread(Table table, String id) {
    for (String section : table.sections()) {
      String[] names = section.split("/", -1);
      String[] path = Arrays.copyOf(names, names.length + 1);
      path[names.length] = id;
      if (facts.misread().at(path)) {
        return true;
      }
    }
    return false;
  }

  private void gather(String key, Gathered fresh, Holder by, String... path) {
    String[] names = new String[by.prefix().size() + path.length];
    by.prefix().toArray(names);
    System.arraycopy(path, 0, names, by.prefix().size(), path.length);
    missing
        .computeIfAbsent(key, absent -> fresh)
        .mentions()
        .add(new Mention(by, facts.places().of(by.subject().place(), names)));
    bad.add(by.subject());
  }

  References result(Tables tables) {
    List<Missing> all = new ArrayList<>();
    missing.forEach((key, gathered) -> all.add(missing(key, gathered, tables)));
    bad.forEach(unjudged::remove);
    return new References(all, holders.size() - bad.size() - unjudged.size(), unjudged);
  }

  private Missing missing(String key, Gathered gathered, Tables tables) {
    List<Mention> mentions = gathered.mentions();
    List<Subject> by = mentions.stream().map(one -> one.by().subject()).distinct().toList();
    List<Place> at = mentions.stream().map(Mention::at).distinct().toList();
    Table table = gathered.table();
    if (table == null) {
      return new Missing(gathered.id(), by, at, gathered.message(), gathered.remedy());
    }
    String id = gathered.id();
    List<String> words = mentions.stream().map(one -> one.by().words()).distinct().toList();
    String message =
        words.size() == 1
            ? words.get(0) + " names " + id + ", but no " + table.noun() + " is called that"
            : "no "
                + table.noun()
                + " is called "
                + id
                + ", but "
                + Series.and(words, SHOWN)
                + " name it";
    return new Missing(key, by, at, message, remedy(table, id, tables));
  }

  private String remedy(Table table, String id, Tables tables) {
    String near = near(table, id);
    String elsewhere = tables.elsewhere(id, table).map(noun -> id + " is a " + noun).orElse("");
    String advice = table.advice();
    if (!table.open() && advice.isEmpty()) {
      advice =
          table.ids().isEmpty()
              ? "there is none"
              : table.ids().size() <= LISTED && near.isEmpty()
                  ? "there " + (table.ids().size() == 1 ? "is " : "are ") + listed(table)
                  : near.isEmpty() ? "correct the name" : "";
    }
    List<String> parts = new ArrayList<>();
    for (String part : List.of(elsewhere, near)) {
      if (!part.isEmpty()) {
        parts.add(part);
      }
    }
    if (!advice.isEmpty()) {
      parts.add(near.isEmpty() ? advice : "if not, " + advice);
    }
    String remedy = parts.get(0);
    for (String part : parts.subList(1, parts.size())) {
      remedy += (remedy.endsWith("?") ? " " : "; ") + part;
    }
    return remedy;
  }

  private static String listed(Table table) {
    return Series.and(List.copyOf(table.ids()));
  }

  private String near(Table table, String id) {
    comparisons += table.ids().size();
    return comparisons > MOST_COMPARISONS ? "" : Nearest.question(id, table.ids());
  }
}
