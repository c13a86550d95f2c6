package org.tugtest.compare.change;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.network.Mate;

/** What became of a connector. */
final class ConnectorWords {
  private final ChangeList list;
  private final ChangeList.Entry entry;

  ConnectorWords(ChangeList list, ChangeList.Entry entry) {
    this.list = list;
    this.entry = entry;
  }

  void say(Connector raw, Connector translated, Connector now) {
    for (FieldDiff diff : FieldDiff.between(raw, translated, now)) {
      switch (diff.head()) {
        case "housing" -> housing(diff);
        case "mates" -> mates(raw, now, diff);
        case "at" -> at(diff);
        default -> FieldWords.field(list, ChangeKind.OTHER, entry, diff);
      }
    }
  }

  private void housing(FieldDiff diff) {
    String was = ValueText.of(diff.raw());
    String is = ValueText.of(diff.now());
    if (was == null || is == null) {
      FieldWords.field(list, ChangeKind.OTHER, entry, diff);
      return;
    }
    list.add(
        ChangeKind.SWAPPED,
        entry,
        diff.path(),
        was,
        is,
        "Connector " + entry.name() + " is a " + is + " instead of a " + was + ".");
  }

  /** What it is plugged into counts, not which half says so. */
  private void mates(Connector raw, Connector now, FieldDiff diff) {
    Optional<String> was = mate(list.before(), raw.id());
    Optional<String> is = mate(list.after(), now.id());
    String wasByNow = was.map(this::afterName).orElse(null);
    if (Objects.equals(wasByNow, is.orElse(null))) {
      FieldWords.field(list, ChangeKind.OTHER, entry, diff);
      return;
    }
    list.add(
        ChangeKind.RE_MATED,
        entry,
        diff.path(),
        ValueText.of(diff.raw()),
        ValueText.of(diff.now()),
        "Connector "
            + entry.name()
            + " plugs into "
            + orNothing(is)
            + " instead of "
            + orNothing(was)
            + ".");
  }

  private String afterName(String mate) {
    int dot = mate.indexOf('.');
    return dot >= 0 ? mate : list.matches().renames().owner(mate);
  }

  private static Optional<String> mate(Facts facts, String connector) {
    return facts.wiring().mating().mateOf(connector).map(Mate::text);
  }

  private static String orNothing(Optional<String> mate) {
    return mate.orElse("nothing");
  }

  private void at(FieldDiff diff) {
    moved(list, entry, "Connector ", List.of("at"), text(diff.raw()), text(diff.now()));
  }

  private static @Nullable String text(@Nullable Object value) {
    return ValueText.of(value);
  }

  /** Something stands elsewhere. */
  static void moved(
      ChangeList list,
      ChangeList.Entry entry,
      String noun,
      List<String> path,
      @Nullable String was,
      @Nullable String is) {
    list.add(
        ChangeKind.MOVED,
        entry,
        path,
        was,
        is,
        noun
            + entry.name()
            + " moves from "
            + (was == null ? "no node of its own" : was)
            + " to "
            + (is == null ? "no node of its own" : is)
            + ".");
  }
}
