package org.tugtest.compare.change;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.match.Match;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.FusePart;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.text.Quoted;

/** Tells the fields of an entry that differ in the words that fit its section. */
final class FieldWords {
  private static final Map<String, ChangeKind> POLICY =
      Map.of(
          "states", ChangeKind.STATE,
          "limits", ChangeKind.LIMIT,
          "waivers", ChangeKind.WAIVER,
          "expectations", ChangeKind.EXPECTATION);
  private final ChangeList list;

  FieldWords(ChangeList list) {
    this.list = list;
  }

  /** Adds the changes of one entry of which something differs. */
  void say(Match match, Object raw, Object translated, Object now) {
    ChangeList.Entry entry = new ChangeList.Entry(match.section(), match.before(), match.after());
    if (now instanceof Wire wire) {
      new WireWords(list, entry).say((Wire) raw, (Wire) translated, wire);
    } else if (now instanceof Connector connector) {
      new ConnectorWords(list, entry).say((Connector) raw, (Connector) translated, connector);
    } else if (now instanceof Splice splice) {
      new SpliceWords(list, entry).say((Splice) raw, (Splice) translated, splice);
    } else if (now instanceof Device device) {
      new DeviceWords(list, entry).say((Device) raw, (Device) translated, device);
    } else if (match.section().equals("fitted")) {
      fitted(entry, (String) raw, (String) now);
    } else {
      others(entry, FieldDiff.between(raw, translated, now));
    }
  }

  private void others(ChangeList.Entry entry, List<FieldDiff> diffs) {
    for (FieldDiff diff : diffs) {
      String last = diff.path().isEmpty() ? "" : diff.path().get(diff.path().size() - 1);
      ChangeKind policy = POLICY.get(entry.section());
      if (policy != null) {
        field(list, policy, entry, diff);
      } else if (last.equals("lengthMm") && ofNumbers(diff)) {
        length(list, entry, diff);
      } else if (diff.inFuse() && ofNumbers(diff)) {
        rating(list, entry, diff);
      } else if (entry.section().equals("parts/wires")
          && (last.equals("areaMm2") || last.equals("awg"))) {
        field(list, ChangeKind.RE_GAUGED, entry, diff);
      } else {
        field(list, ChangeKind.OTHER, entry, diff);
      }
    }
  }

  static boolean ofNumbers(FieldDiff diff) {
    return diff.raw() instanceof Number && diff.now() instanceof Number;
  }

  /** Any field with its name and both values. */
  static void field(ChangeList list, ChangeKind kind, ChangeList.Entry entry, FieldDiff diff) {
    String was = ValueText.of(diff.raw());
    String is = ValueText.of(diff.now());
    String name = FieldNames.joined(diff.path());
    String of = entry.name() + (name.isEmpty() ? "" : ": " + name);
    String sentence;
    if (was == null) {
      sentence = of + " is given, " + shown(is) + ".";
    } else if (is == null) {
      sentence = of + " is no longer given; it was " + shown(was) + ".";
    } else if (diff.translated() instanceof Collection<?> before
        && diff.now() instanceof Collection<?> after
        && ListWords.tell(before, after)) {
      boolean many = name.endsWith("s");
      sentence = of + " " + ListWords.of(before, after, many) + ".";
    } else {
      sentence = of + " goes from " + shown(was) + " to " + shown(is) + ".";
    }
    list.add(kind, entry, diff.path(), was, is, sentence);
  }

  /** A rating of a fuse, in amps. */
  static void rating(ChangeList list, ChangeList.Entry entry, FieldDiff diff) {
    list.add(
        ChangeKind.FUSE_RE_RATED,
        entry,
        diff.path(),
        ValueText.of(diff.raw()),
        ValueText.of(diff.now()),
        FieldNames.joined(diff.path())
            + " of "
            + entry.name()
            + " goes from "
            + ValueText.of(diff.raw())
            + " A to "
            + ValueText.of(diff.now())
            + " A.");
  }

  /** A length in millimetres that is given on both sides. */
  static void length(ChangeList list, ChangeList.Entry entry, FieldDiff diff) {
    double was = ((Number) java.util.Objects.requireNonNull(diff.raw())).doubleValue();
    double is = ((Number) java.util.Objects.requireNonNull(diff.now())).doubleValue();
    boolean longer = is > was;
    list.add(
        longer ? ChangeKind.LENGTHENED : ChangeKind.SHORTENED,
        entry,
        diff.path(),
        ValueText.of(diff.raw()),
        ValueText.of(diff.now()),
        entry.name()
            + " is "
            + Quoted.number(Math.abs(is - was))
            + " mm "
            + (longer ? "longer" : "shorter")
            + " ("
            + FieldNames.joined(diff.path())
            + " from "
            + ValueText.of(diff.raw())
            + " to "
            + ValueText.of(diff.now())
            + " mm).");
  }

  /** A cut or built length of a wire that is given on one side alone. */
  static void lengthGiven(ChangeList list, ChangeList.Entry entry, FieldDiff diff) {
    String was = ValueText.of(diff.raw());
    String is = ValueText.of(diff.now());
    String what = diff.head().equals("cutMm") ? " cut length" : " built length";
    String sentence =
        is == null
            ? entry.name() + " has no" + what + " any more; it was " + was + " mm."
            : entry.name() + " has a" + what + " now, " + is + " mm.";
    list.add(ChangeKind.OTHER, entry, diff.path(), was, is, sentence);
  }

  private void fitted(ChangeList.Entry entry, String was, String is) {
    Double old = rating(list.before().harness().parts().fuses().get(was));
    Double now = rating(list.after().harness().parts().fuses().get(is));
    if (old != null && now != null && !old.equals(now)) {
      list.add(
          ChangeKind.FUSE_RE_RATED,
          entry,
          List.of(),
          was,
          is,
          "Fuse "
              + entry.name()
              + " goes from "
              + Quoted.number(old)
              + " A to "
              + Quoted.number(now)
              + " A ("
              + was
              + " to "
              + is
              + ").");
    } else {
      list.add(
          ChangeKind.SWAPPED,
          entry,
          List.of(),
          was,
          is,
          "Fuse " + entry.name() + " goes from " + was + " to " + is + ".");
    }
  }

  private static @Nullable Double rating(@Nullable FusePart part) {
    return part == null ? null : part.ratingA();
  }

  private static String shown(@Nullable String value) {
    return value == null ? "" : Quoted.name(value.isEmpty() ? "\"\"" : value);
  }
}
